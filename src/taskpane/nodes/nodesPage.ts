import { html, nothing, type TemplateResult } from "lit";
import type { Refusal } from "../../domain/refusal";
import { blockFigureSentence } from "../../survey/crop/blockFigureSentence";
import { threeDigits, vineCropIn } from "../../survey/crop/cropWords";
import type { BlockBudget, RuleBudget } from "../../survey/decide/plan/blockBudgets";
import type { Injury, NodesOrRefusal } from "../../survey/decide/plan/injuryOfBlocks";
import { overHalfSentence, straddleSentence } from "../../survey/decide/plan/injurySentences";
import { nodeRule } from "../../survey/sheets/nodeRules";
import { NODES_TEXTS, GAP_SHEET_TEXTS } from "../../texts/pane";
import { REFUSALS } from "../../texts/refusals";
import { changePage } from "../changePage";
import { choiceField } from "../fields";
import { jumpButton } from "../jumpButton";
import { rangeBar } from "../outlook/rangeBar";
import type { Pane } from "../pane";
import { percent } from "../percent";
import { progressBar } from "../progressBar";
import { settingButton } from "../settingButton";
import type { NodesResult, NodesState } from "./nodesState";
import { workNodes } from "./workNodes";

export { workNodesAnew } from "./workNodes";

/** The page that shows what the winter did to the buds and what to leave for it. */
export function nodesPage(pane: Pane): TemplateResult {
  const page = pane.state.nodes;
  return html`<h1>${pane.say(NODES_TEXTS.title)}</h1>
    <p class="quiet">${pane.say(NODES_TEXTS.intro)}</p>
    ${
      page.progress === undefined
        ? page.result === undefined
          ? start(pane)
          : nothing
        : progressBar(pane, pane.say(NODES_TEXTS.progress), page.progress)
    }
    ${page.result === undefined || page.progress !== undefined ? nothing : result(pane, page, page.result)}`;
}

function start(pane: Pane): TemplateResult {
  return html`<div class="buttons">
    <fluent-button
      id="work-nodes"
      appearance="primary"
      @click=${() => pane.start((signal) => workNodes(pane, signal))}
      >${pane.say(NODES_TEXTS.work)}</fluent-button
    >
  </div>`;
}

function result(pane: Pane, page: NodesState, found: NodesResult): TemplateResult {
  if (found.blocks.length === 0)
    return html`<fluent-message-bar intent="info" layout="singleline"
      >${pane.say(NODES_TEXTS.none)}</fluent-message-bar
    >`;
  const chosen = found.blocks.find(({ block }) => block === page.block) ?? found.blocks[0];
  return html`${winter(pane, found)}
    ${choiceField({
      id: "nodes-block",
      label: pane.say(GAP_SHEET_TEXTS.block),
      value: chosen.block,
      options: found.blocks.map(({ block }) => ({ value: block, label: block })),
      onChoose: (block) => changePage(pane, "nodes", { block }),
    })}
    ${leave(pane, found, chosen)} ${ruleTable(pane, found, chosen)} ${injuryTable(pane, chosen)}
    ${spurs(pane, chosen)} ${light(pane, found, chosen)}
    <p class="small quiet">${pane.say(NODES_TEXTS.caution)}</p>`;
}

/** Dead buds of every block, then of every cultivar, each with its range on one scale from none to all. */
function winter(pane: Pane, { blocks, cultivars }: NodesResult): TemplateResult {
  const hurt = blocks.flatMap(({ block, injury }) => (injury && injury.share > 0.5 ? [block] : []));
  return html`<section class="stack">
    <h2>${pane.say(NODES_TEXTS.winter)}</h2>
    <ul class="plain" id="dead-buds">
      ${blocks.map(({ block, injury }) => deadBuds(pane, block, injury))}
    </ul>
    ${
      cultivars.length === 0
        ? nothing
        : html`<h3>${pane.say(NODES_TEXTS.byCultivar)}</h3>
            <ul class="plain" id="dead-buds-by-cultivar">
              ${cultivars.map((one) =>
                deadBuds(
                  pane,
                  pane.say(NODES_TEXTS.cultivar, { cultivar: one.cultivar, blocks: one.blocks.join(", ") }),
                  one,
                ),
              )}
            </ul>`
    }
    ${
      hurt.length > 0
        ? html`<fluent-message-bar intent="warning" layout="multiline"
            >${overHalfSentence(hurt, pane.state.language)}</fluent-message-bar
          >`
        : nothing
    }
  </section>`;
}

function deadBuds(pane: Pane, name: string, injury: Injury | undefined): TemplateResult {
  if (injury === undefined)
    return html`<li><strong>${name}</strong> <span class="quiet">${pane.say(NODES_TEXTS.noBuds)}</span></li>`;
  const { dead, cut, share, low, high } = injury;
  const words = pane.say(NODES_TEXTS.buds, {
    dead,
    cut,
    share: percent(pane, share),
    low: percent(pane, low),
    high: percent(pane, high),
  });
  return html`<li>
    <strong>${name}</strong> ${words}
    ${rangeBar({ range: { low, likely: share, high }, most: 1, words: `${name}: ${words}` })}
  </li>`;
}

/** Figures of a block that the page works with. */
const NODE_FIGURES = ["nodeRule", "mostNodes", "nodesASpur"] as const;

function leave(pane: Pane, { settings }: NodesResult, block: BlockBudget): TemplateResult {
  const { nodes, limited, refusal } = block.leave;
  const facts = {
    nodes: Math.round(nodes ?? 0),
    rule: ruleWords(pane, block.rules[0].rule),
    injuryRule: block.injuryRule,
  };
  const corrected = block.injury !== undefined;
  return html`<section class="stack">
    <h2>${pane.say(NODES_TEXTS.leave)}</h2>
    <p id="leave" class="headline">
      ${
        nodes === undefined
          ? pane.say(NODES_TEXTS.noNumber, { reason: reasonOf(pane, refusal) })
          : pane.say(corrected ? NODES_TEXTS.leavesCorrected : NODES_TEXTS.leaves, facts)
      }
      ${limited === undefined ? nothing : pane.say(limited === "least" ? NODES_TEXTS.limitedLeast : NODES_TEXTS.limitedMost)}
    </p>
    ${
      block.straddle === undefined
        ? nothing
        : html`<fluent-message-bar id="straddle" intent="warning" layout="multiline"
            >${straddleSentence(block, pane.state.language)}</fluent-message-bar
          >`
    }
    <p class="small" id="block-figures">
      ${blockFigureSentence(block.figures, NODE_FIGURES, pane.state.language)}
      ${
        settings.leastNodesAVine > 0
          ? pane.say(NODES_TEXTS.least, { least: settings.leastNodesAVine })
          : pane.say(NODES_TEXTS.noLeast)
      }
    </p>
    <div class="buttons">
      ${settingButton(pane, "nodeRule")} ${corrected ? settingButton(pane, "injuryRule") : nothing}
      ${
        limited === undefined
          ? nothing
          : settingButton(pane, limited === "least" ? "leastNodesAVine" : "mostNodesAVine")
      }
      ${block.light.length > 0 && settings.belowOnePound === "refuse" ? settingButton(pane, "belowOnePound") : nothing}
    </div>
  </section>`;
}

function ruleTable(pane: Pane, { units }: NodesResult, block: BlockBudget): TemplateResult {
  const { vines, mean } = block.weighed;
  const shown = mean === undefined ? undefined : vineCropIn(mean, units);
  const basis =
    shown === undefined
      ? pane.say(NODES_TEXTS.noneWeighed)
      : pane.say(vines === 1 ? NODES_TEXTS.oneWeighed : NODES_TEXTS.own, {
          vines,
          mean: threeDigits(shown.value, pane.state.language),
          unit: shown.unit,
        });
  return html`<table id="node-rules" class="small">
    <caption>
      <h2>${pane.say(NODES_TEXTS.rules)}</h2>
      <p class="small quiet">${pane.say(NODES_TEXTS.rulesKey, { basis })}</p>
    </caption>
    <thead>
      <tr>
        <th scope="col">${pane.say(NODES_TEXTS.rule)}</th>
        <th scope="col" class="number">${pane.say(NODES_TEXTS.nodes)}</th>
      </tr>
    </thead>
    <tbody>
      ${block.rules.map((rule) => ruleLine(pane, rule))}
    </tbody>
  </table>`;
}

function ruleLine(pane: Pane, { rule, inForce, ...answer }: RuleBudget): TemplateResult {
  const shown = ruleWords(pane, rule);
  return html`<tr>
    <th scope="row">${inForce ? pane.say(NODES_TEXTS.inForce, { rule: shown }) : shown}</th>
    <td class="number">${numberOrReason(pane, answer)}</td>
  </tr>`;
}

function injuryTable(pane: Pane, { corrected, injuryRule }: BlockBudget): TemplateResult | typeof nothing {
  if (corrected.length === 0) return nothing;
  const isInForce = (rule: string) => rule.toLowerCase() === injuryRule.toLowerCase();
  return html`<table id="injury-rules" class="small">
    <caption>
      <h2>${pane.say(NODES_TEXTS.injuryRules)}</h2>
    </caption>
    <thead>
      <tr>
        <th scope="col">${pane.say(NODES_TEXTS.rule)}</th>
        <th scope="col" class="number">${pane.say(NODES_TEXTS.nodes)}</th>
        <th scope="col" class="number">${pane.say(NODES_TEXTS.live)}</th>
      </tr>
    </thead>
    <tbody>
      ${corrected.map(
        ({ rule, liveNodes, ...answer }) =>
          html`<tr>
            <th scope="row">${isInForce(rule) ? pane.say(NODES_TEXTS.inForce, { rule }) : rule}</th>
            ${
              answer.nodes === undefined
                ? html`<td colspan="2">${reasonOf(pane, answer.refusal)}</td>`
                : html`<td class="number">${threeDigits(answer.nodes, pane.state.language)}</td>
                    <td class="number">${threeDigits(liveNodes ?? 0, pane.state.language)}</td>`
            }
          </tr>`,
      )}
    </tbody>
  </table>`;
}

function spurs(pane: Pane, block: BlockBudget): TemplateResult {
  const { spurs: counted, leave: wanted, figures, spurLimits } = block;
  const { most, bearingBasal } = spurLimits;
  const digits = (value: number) => threeDigits(value, pane.state.language);
  const held = (nodes: number) => digits((counted?.mean ?? 0) * nodes);
  const usual = figures.nodesASpur.value;
  const short = (wanted.nodes ?? 0) - (counted?.mean ?? 0) * (most + bearingBasal);
  return html`<section class="stack">
    <h2>${pane.say(NODES_TEXTS.spurs)}</h2>
    <p id="spurs-carry">
      ${
        counted === undefined
          ? pane.say(NODES_TEXTS.noSpurs)
          : pane.say(NODES_TEXTS.carried, {
              spurs: digits(counted.mean),
              vines: counted.vines,
              usual: digits(usual),
              held: held(usual),
              most: digits(most),
              heldMost: held(most),
            })
      }
      ${
        counted === undefined || wanted.nodes === undefined || counted.mean === 0
          ? nothing
          : short > 0
            ? pane.say(NODES_TEXTS.short, { short: digits(short) })
            : pane.say(NODES_TEXTS.enough, { each: digits(wanted.nodes / counted.mean) })
      }
    </p>
  </section>`;
}

function light(pane: Pane, { units }: NodesResult, block: BlockBudget): TemplateResult | typeof nothing {
  if (block.light.length === 0) return nothing;
  return html`<section class="stack">
    <h2>${pane.say(NODES_TEXTS.light)}</h2>
    <p class="small">${pane.say(NODES_TEXTS.lightWhy)}</p>
    <ul class="plain" id="light-vines">
      ${block.light.map(({ row, vine, prunings, table, index }) => {
        const { value, unit } = vineCropIn(prunings, units);
        const column = table.column("prunings")!.sheetColumn;
        return html`<li>
          ${jumpButton(
            pane,
            { sheet: table.sheet, row: table.sheetRow(index), column },
            pane.say(NODES_TEXTS.lightVine, {
              row,
              vine,
              mass: threeDigits(value, pane.state.language),
              unit,
            }),
          )}
        </li>`;
      })}
    </ul>
  </section>`;
}

/** Why there is no number, in the sentences of the functions; they name no argument here, and no more digits than the page. */
function reasonOf(pane: Pane, refusal: Refusal | undefined): string {
  if (refusal === undefined) return "";
  const facts = Object.entries(refusal.facts).map(([name, fact]) => [
    name,
    typeof fact === "number" ? threeDigits(fact, pane.state.language) : fact,
  ]);
  return pane.say(REFUSALS[refusal.code], Object.fromEntries(facts));
}

/** A rule as the reader's language writes it; formulas and numbers are written alike in each. */
const ruleWords = (pane: Pane, rule: string) =>
  nodeRule(rule).isOneRule ? pane.say(NODES_TEXTS.byLength) : rule;

const numberOrReason = (pane: Pane, { nodes, refusal }: NodesOrRefusal) =>
  nodes === undefined ? reasonOf(pane, refusal) : threeDigits(nodes, pane.state.language);
