import { html, nothing, type TemplateResult } from "lit";
import { ref } from "lit/directives/ref.js";

export interface ChoiceOption {
  readonly value: string;
  readonly label: string;
}

/** A labelled drop-down list. */
export function choiceField(field: {
  id: string;
  label: string;
  value: string;
  options: readonly ChoiceOption[];
  onChoose: (value: string) => void;
}): TemplateResult {
  const labelId = `${field.id}-label`;
  return html`<div class="choice">
    <span id=${labelId}>${field.label}</span>
    <fluent-dropdown
      id=${field.id}
      size="small"
      ${ref((element) => void showChoice(element as DropdownElement | undefined, labelId, field.value))}
      @change=${(event: Event) => {
        const chosen = (event.currentTarget as DropdownElement).value;
        if (chosen !== null && chosen !== field.value) field.onChoose(chosen);
      }}
    >
      <fluent-listbox aria-labelledby=${labelId}>
        ${field.options.map(
          (option) => html`<fluent-option value=${option.value}>${option.label}</fluent-option>`,
        )}
      </fluent-listbox>
    </fluent-dropdown>
  </div>`;
}

interface DropdownElement extends HTMLElement {
  value: string | null;
  open?: boolean;
  readonly control?: HTMLElement;
}

/** Fluent makes the drop-down's button later than the page is drawn; it gets its name, state and value then. */
async function showChoice(dropdown: DropdownElement | undefined, labelId: string, value: string) {
  if (dropdown === undefined) return;
  for (let frame = 0; frame < 60 && dropdown.control === undefined; frame += 1)
    await new Promise(requestAnimationFrame);
  if (dropdown.control === undefined) return;
  dropdown.control.setAttribute("aria-labelledby", `${labelId} ${dropdown.control.id}`);
  dropdown.open ??= false;
  if (dropdown.value !== value) dropdown.value = value;
}

/** A labelled line of text. */
export function textField(field: {
  id: string;
  label: string;
  value: string;
  onInput: (value: string) => void;
  type?: "text" | "search";
  placeholder?: string;
}): TemplateResult {
  return html`<fluent-text-input
    id=${field.id}
    control-size="small"
    autocomplete="off"
    placeholder=${field.placeholder ?? nothing}
    .value=${field.value}
    @input=${(event: Event) => field.onInput((event.currentTarget as HTMLInputElement).value)}
    >${field.label}</fluent-text-input
  >`;
}

/** A box to tick with its label beside it. */
export function tickField(field: {
  id: string;
  label: string;
  ticked: boolean;
  onTick: () => void;
}): TemplateResult {
  return html`<div class="beside">
    <fluent-checkbox
      id=${field.id}
      aria-label=${field.label}
      .checked=${field.ticked}
      @change=${field.onTick}
    ></fluent-checkbox>
    <label for=${field.id} class="wide">${field.label}</label>
  </div>`;
}
