import { html, nothing, type TemplateResult } from "lit";
import { repeat } from "lit/directives/repeat.js";
import { FUNCTIONS_TEXTS } from "../../texts/pane";
import { textField } from "../fields";
import { foldsOf } from "../folds";
import { changePage } from "../changePage";
import type { Pane } from "../pane";
import { functionHelp, searchHelp, shownValues, type FunctionHelp } from "../../functions/functionHelp";
import { cellView } from "./cellView";
import { followCell, lookAgain } from "./followCell";
import { insertFormula } from "./insertFormula";

/** The page that explains the functions and puts them into cells. */
export function functionsPage(pane: Pane): TemplateResult {
  const { language, functions } = pane.state;
  const all = functionHelp(language);
  const found = searchHelp(all, functions.search);
  followCell(pane);
  return html`<h1>${pane.say(FUNCTIONS_TEXTS.title)}</h1>
    ${cellView(pane)}
    <p class="quiet">${pane.say(FUNCTIONS_TEXTS.intro)}</p>
    ${textField({
      id: "function-search",
      label: pane.say(FUNCTIONS_TEXTS.search),
      value: functions.search,
      onInput: (search) => changePage(pane, "functions", { search }),
    })}
    <p class="small" role="status">
      ${
        found.length === 0
          ? pane.say(FUNCTIONS_TEXTS.none)
          : pane.say(FUNCTIONS_TEXTS.found, { found: found.length, all: all.length })
      }
    </p>
    <fluent-accordion
      @change=${(event: Event) => {
        changePage(pane, "functions", {
          open: new Set(foldsOf(event).flatMap(([key, open]) => (open ? [key] : []))),
        });
        lookAgain(pane);
      }}
    >
      ${repeat(
        found,
        ({ id }) => id,
        (help) => functionItem(pane, help),
      )}
    </fluent-accordion>`;
}

function functionItem(pane: Pane, help: FunctionHelp): TemplateResult {
  const { functions, language } = pane.state;
  const open = functions.open.has(help.id);
  const typed = functions.formulas.get(help.id);
  const here = functions.here?.get(help.id);
  const formula = typed ?? (here && "formula" in here ? here.formula : help.formula);
  return html`<fluent-accordion-item
    block
    marker-position="end"
    headinglevel="2"
    data-key=${help.id}
    .expanded=${open}
  >
    <span slot="heading" class="heading">${help.id}</span>
    ${
      !open
        ? nothing
        : html`<div class="stack">
            <p>${help.description}</p>
            <code>${help.call}</code>
            ${
              help.parameters.length === 0
                ? nothing
                : html`<h3>${pane.say(FUNCTIONS_TEXTS.parameters)}</h3>
                    <dl>
                      ${help.parameters.map(
                        ({ label, optional, description, expected }) =>
                          html`<dt>${optional ? pane.say(FUNCTIONS_TEXTS.optional, { label }) : label}</dt>
                            <dd>${description} <span class="quiet">(${expected})</span></dd>`,
                      )}
                    </dl>`
            }
            <h3>${pane.say(FUNCTIONS_TEXTS.results)}</h3>
            <p>${help.results.join(", ")}</p>
            <h3>${pane.say(FUNCTIONS_TEXTS.example)}</h3>
            ${help.examples.map(
              (example) =>
                html`<div>
                  <code>${example.formula}</code>
                  <p>${pane.say(FUNCTIONS_TEXTS.gives, { value: shownValues(example.gives, language) })}</p>
                  <p class="small quiet">
                    ${pane.say(FUNCTIONS_TEXTS.source, { work: example.source.work })}
                  </p>
                </div>`,
            )}
            ${textField({
              id: `formula-${help.id}`,
              label: pane.say(FUNCTIONS_TEXTS.formula),
              value: formula,
              onInput: (typed) =>
                changePage(pane, "functions", { formulas: new Map(functions.formulas).set(help.id, typed) }),
            })}
            <div class="buttons">
              <fluent-button
                class="insert"
                size="small"
                appearance="primary"
                @click=${() => void pane.attempt(() => insertFormula(pane, help, typed))}
                >${pane.say(FUNCTIONS_TEXTS.insert)}</fluent-button
              >
            </div>
          </div>`
    }
  </fluent-accordion-item>`;
}
