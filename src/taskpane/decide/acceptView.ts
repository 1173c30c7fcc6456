import { html, nothing, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";
import type { DecidedVine } from "../../survey/decide/decideSeason";
import { ACCEPT_TEXTS } from "../../texts/accept";
import { SEASON_TEXTS } from "../../texts/seasonPage";
import { DECIDE_TEXTS, PANE_TEXTS } from "../../texts/pane";
import { textField } from "../fields";
import { remembered } from "../ownView";
import { changePage } from "../changePage";
import { openPage } from "../openPage";
import { currentOnly } from "../pageAge";
import type { Pane } from "../pane";
import { showOnce } from "../showOnce";
import { acceptBlock, takeBackBlock } from "./acceptBlock";
import { acceptPlan, type AcceptPlan } from "./acceptPlan";
import type { AcceptQuestion, DecideState } from "./decideState";

/** How far the chosen block is accepted, the button that accepts its decided vines, and the one that takes it back. */
export function acceptView(pane: Pane, page: DecideState, vines: readonly DecidedVine[]): TemplateResult {
  const { block, accepting, lastBlock } = page;
  return html`${
    block === ""
      ? html`<p class="small">${pane.say(ACCEPT_TEXTS.chooseBlock)}</p>`
      : ofBlock(pane, block, vines)
  }
  ${
    lastBlock === undefined
      ? nothing
      : html`<div class="buttons">
          <fluent-button
            id="take-back-block"
            size="small"
            @click=${() => void pane.attempt(() => takeBackBlock(pane))}
            >${pane.say(ACCEPT_TEXTS.takeBack, { block: lastBlock.block })}</fluent-button
          >
        </div>`
  }
  ${accepting === undefined ? nothing : acceptDialog(pane, accepting, acceptPlan(vines, accepting.block))}`;
}

function ofBlock(pane: Pane, block: string, vines: readonly DecidedVine[]): TemplateResult {
  const { all, accepted, ask: asked, vines: open, unreadable, withoutColumn } = acceptPlan(vines, block);
  const facts = { block, accepted, all, ask: asked, open: all - accepted - asked };
  return html`<div class="stack" role="group" aria-label=${pane.say(ACCEPT_TEXTS.progressName)}>
      <span id="accept-progress" class="small">${pane.say(ACCEPT_TEXTS.progress, facts)}</span>
      <fluent-progress-bar
        aria-labelledby="accept-progress"
        min="0"
        max=${all}
        .value=${accepted}
      ></fluent-progress-bar>
    </div>
    ${unreadable === 0 ? nothing : html`<p class="small">${pane.say(ACCEPT_TEXTS.unreadable, { unreadable })}</p>`}
    ${
      open.length === 0 && withoutColumn === undefined
        ? accepted > 0 && asked === 0
          ? onwards(pane)
          : nothing
        : html`<div class="buttons">
            <fluent-button
              id="accept-block"
              size="small"
              @click=${() =>
                withoutColumn === undefined
                  ? ask(pane, { block, by: remembered("name") })
                  : pane.tell("warning", DECIDE_TEXTS.noColumn, {
                      sheet: withoutColumn,
                    })}
              >${pane.say(ACCEPT_TEXTS.ask, { vines: facts.open - unreadable })}</fluent-button
            >
          </div>`
    }`;
}

/** Where a block is accepted, the way on is what Season has open next. */
function onwards(pane: Pane): TemplateResult {
  return html`<div class="buttons">
    <fluent-button id="accept-next" size="small" appearance="primary" @click=${() => openPage(pane, "season")}
      >${pane.say(SEASON_TEXTS.next)}</fluent-button
    >
  </div>`;
}

function ask(pane: Pane, accepting: AcceptQuestion | undefined): void {
  changePage(pane, "decide", { accepting });
}

/** Says what would be written and asks for a yes with a name. */
function acceptDialog(pane: Pane, question: AcceptQuestion, plan: AcceptPlan): TemplateResult {
  const { block, by } = question;
  const facts = {
    cells: plan.wanted.length,
    vines: plan.vines.length,
    ask: plan.ask,
  };
  const title = pane.say(ACCEPT_TEXTS.title, { block });
  const yes = async () => {
    ask(pane, undefined);
    await currentOnly(pane, "decide", () => acceptBlock(pane, block, by));
  };
  return html`<fluent-dialog
    id="accept-dialog"
    type="modal"
    aria-label=${title}
    ${ref(showOnce)}
    @toggle=${({ detail }: CustomEvent<{ newState: string }>) => {
      if (detail.newState === "closed") ask(pane, undefined);
    }}
  >
    <fluent-dialog-body>
      <h2 slot="title">${title}</h2>
      <div class="stack">
        <p id="accept-would">${pane.say(ACCEPT_TEXTS.wouldWrite, facts)}</p>
        <p>${pane.say(DECIDE_TEXTS.caution)}</p>
        ${textField({
          id: "accept-by",
          label: pane.say(ACCEPT_TEXTS.by),
          value: by,
          onInput: (name) => ask(pane, { ...question, by: name }),
        })}
        <p class="small">${pane.say(ACCEPT_TEXTS.byHelp)}</p>
      </div>
      <fluent-button slot="action" id="accept-yes" appearance="primary" @click=${() => void pane.attempt(yes)}
        >${pane.say(ACCEPT_TEXTS.yes, facts)}</fluent-button
      >
      <fluent-button slot="action" id="accept-cancel" @click=${() => ask(pane, undefined)}
        >${pane.say(PANE_TEXTS.cancel)}</fluent-button
      >
    </fluent-dialog-body>
  </fluent-dialog>`;
}
