import { loadExcelProxies, type ExcelProxies, type HostBridge } from "./excelProxies";
import {
  COLUMNS,
  HostBook,
  HostFault,
  type HostArea,
  type HostCell,
  type HostSheet,
  type HostValue,
} from "./hostBook";
import { EXCEL_PROFILES, FAILS_BEHIND_ANOTHER_WORKBOOK, undoOf, type ExcelProfile } from "./excelProfiles";
import { areaAddress, Collection, NullObject, WorkbookObject, type Person } from "./hostObjects";

type CellsBefore = ReadonlyMap<HostSheet, ReadonlyMap<number, HostCell>>;

/** One action of a batch as it travels: what is asked of which object. */
export interface WireAction {
  readonly Id: number;
  readonly ActionType: number;
  readonly Name: string;
  readonly ObjectPathId: number;
  readonly QueryInfo?: { Select?: string[] };
  readonly ArgumentInfo?: WireArguments;
}

interface WireArguments {
  readonly Arguments?: unknown[];
  readonly ReferencedObjectPathIds?: (number | null)[];
}

interface WirePath {
  readonly Id: number;
  readonly ObjectPathType: number;
  readonly Name: string;
  readonly ParentObjectPathId?: number;
  readonly ArgumentInfo?: WireArguments;
}

interface WireBatch {
  readonly Actions: WireAction[];
  readonly ObjectPaths: Record<string, WirePath>;
}

/** Refuses an action before it is done: the batch stops there, what came before it stays done. */
export interface Fault {
  /** Number of the batch, the first is 1; any when left out. */
  readonly batch?: number;
  /** Wire name of a method or property, such as "CopyFrom"; any when left out. */
  readonly name?: string;
  /** How many fitting actions are let through first. */
  readonly after?: number;
  /** How often it strikes; once when left out. */
  readonly times?: number;
  readonly code: string;
  readonly message?: string;
}

const INSTANTIATE = 1;
const QUERY = 2;
const METHOD = 3;
const SET = 4;
const TRACE = 5;
const ROOT_PATH = 1;
const METHOD_PATH = 3;
const PROPERTY_PATH = 4;
const INDEXER_PATH = 5;
const REFERENCE_PATH = 6;
const CHANGED_EVENT = 10;
const SELECTED_EVENT = 14;
const EVENT_CATEGORY = 65536;
/** Of a message: what delayForCellEdit of Excel.run becomes on the wire. */
const DELAY_FOR_CELL_EDIT = 64;

/**
 * A workbook in memory that speaks the wire of Office.js, for as many people as a test needs: each has real Excel
 * proxies of their own, and all work on one book. Batches run one after the other; what an action did before a later
 * one was refused stays done, as in Excel. It does not calculate and does not move references when rows are inserted.
 */
export class ExcelHost {
  readonly book = new HostBook();
  /** Every action of every batch, by wire name, in their order. */
  readonly log: { batch: number; who: string; name: string }[] = [];
  /** Whether copied cells come without their notes and comments: no page says which. */
  leavesRemarks = false;
  /** Called before each batch: a test lets somebody else act in between. */
  beforeBatch: ((batch: number, who: string) => Promise<void> | void) | undefined;
  /**
   * Largest message in characters: on the web alone, in tests of everything on every Excel
   * (https://learn.microsoft.com/office/dev/add-ins/concepts/resource-limits-and-performance-optimization).
   */
  messageLimit = 5 * 1024 * 1024;
  largestMessage = 0;
  batches = 0;
  private readonly loaded: ExcelProxies[] = [];
  private faults: { fault: Fault; seen: number; struck: number }[] = [];
  private readonly people: (Person & { readonly bridge: HostBridge })[] = [];

  constructor(readonly profile: ExcelProfile = EXCEL_PROFILES.perpetual2021) {}

  refuse(fault: Fault): void {
    this.faults.push({ fault, seen: 0, struck: 0 });
  }

  clearFaults(): void {
    this.faults = [];
  }

  addSheet(name: string, rows: readonly (readonly (HostValue | null | { error: string })[])[]): void {
    const sheet = this.book.addSheet(name);
    rows.forEach((row, r) =>
      row.forEach((value, c) => {
        if (value === null) return;
        if (typeof value === "object") sheet.put(r, c, { value: value.error, type: "Error" });
        else if (typeof value === "string") sheet.put(r, c, { value, type: "String", quoted: true });
        else sheet.put(r, c, this.book.typed(value));
      }),
    );
  }

  /** Somebody types into a cell. */
  type(who: string, sheet: string, row: number, column: number, value: HostValue): void {
    const found = this.book.sheet(sheet);
    const before = this.copyCells();
    found.put(row - 1, column - 1, this.book.typed(value));
    this.undoListOf(who).push("typed");
    this.keepCells(who, before);
    this.tell(who, {
      sheet: found,
      row: row - 1,
      column: column - 1,
      rows: 1,
      columns: 1,
    });
  }

  /** A person with this workbook open, and their Excel. */
  person(name = "somebody"): ExcelProxies {
    const bridge: HostBridge = { sendMessageToHost: () => undefined };
    this.join(name, bridge);
    const proxies = loadExcelProxies(bridge, (set, version = "1.1") => this.supports(set, version));
    this.loaded.push(proxies);
    return proxies;
  }

  /** A person whose proxies stand elsewhere, such as in a browser's page: from now on the bridge is answered. */
  join(name: string, bridge: HostBridge): void {
    const leavesRemarks = () => this.leavesRemarks;
    const person = {
      name,
      knowsNotes: this.supports("ExcelApi", "1.18"),
      bridge,
      book: this.book,
      get leavesRemarks() {
        return leavesRemarks();
      },
      selection: undefined,
      activeSheet: undefined,
      registrations: 0,
      tellChange: (area: HostArea, changeType?: string) => this.tell(name, area, changeType),
      tellSelection: (area: HostArea) => tellSelection(person, area),
    } as Person & { bridge: HostBridge };
    this.people.push(person);
    bridge.sendMessageToHost = (text) => {
      void this.answer(person, text);
    };
  }

  /** Resolves when the proxies have also given back their references, which they do after a run. */
  async quiet(): Promise<void> {
    for (let seen = -1; seen !== this.batches; await new Promise((resolve) => setTimeout(resolve, 2)))
      seen = this.batches;
  }

  /** Everybody closes the workbook: their proxies serve the next host, which is faster than loading new ones. */
  close(): void {
    for (const proxies of this.loaded.splice(0)) proxies.release();
  }

  /** Office.context.requirements.isSetSupported of this copy of Excel. */
  supports(set: string, version: string): boolean {
    const minor = Number(version.split(".")[1] ?? 0);
    if (set === "ExcelApi") return minor <= this.profile.excelApi;
    if (set === "CustomFunctionsRuntime") return minor <= this.profile.customFunctions;
    return /^(RichApiRuntime|SharedRuntime|DelayForCellEdit)$/.test(set);
  }

  private tell(who: string, area: HostArea, changeType = "RangeEdited"): void {
    for (const person of this.people) {
      if (person.registrations === 0) continue;
      const message = JSON.stringify({
        worksheetId: area.sheet.id,
        address: areaAddress(area, false),
        changeType,
        source: person.name === who ? "Local" : "Remote",
        shiftDirection: "None",
      });
      const entry = {
        messageCategory: EVENT_CATEGORY,
        messageType: CHANGED_EVENT,
        targetId: "Workbook",
        message,
      };
      setTimeout(
        () => person.bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries: [entry] } })),
        0,
      );
    }
  }

  /**
   * A person edits a cell until the function that this gives is called. Meanwhile their batches are refused, or wait
   * where delayForCellEdit asks for it: https://learn.microsoft.com/javascript/api/excel/excel.runoptions
   */
  edit(who: string): () => void {
    let leave = () => undefined as void;
    this.editing.set(who, new Promise<void>((resolve) => (leave = resolve)));
    return () => {
      this.editing.delete(who);
      leave();
    };
  }

  /** From now on a registration of this person's that is taken back ends the others. */
  endWatchesTogether(who: string): void {
    for (const person of this.people) if (person.name === who) person.endsWatchesTogether = true;
  }

  /** How many registrations for changed cells this person's Excel holds now. */
  registrationsOf(who: string): number {
    return this.people.filter(({ name }) => name === who).reduce((sum, each) => sum + each.registrations, 0);
  }

  private readonly editing = new Map<string, Promise<void>>();

  /** Resolves when a batch of this person's that is more than tidying waits for a cell to be left. */
  waits(who: string): Promise<void> {
    return new Promise((resolve) => this.onWait.set(who, resolve));
  }

  private readonly onWait = new Map<string, () => void>();

  /** A person brings another workbook to the front until the function that this gives is called. */
  switchAway(who: string): () => void {
    this.away.add(who);
    return () => void this.away.delete(who);
  }

  private readonly away = new Set<string>();

  /** Keeps the workbook and where everybody is in it; the function that this gives puts all of it back. */
  keep(): () => void {
    const putBack = this.book.keep();
    const places = this.people.map(({ selection, activeSheet }) => ({ selection, activeSheet }));
    return () => {
      putBack();
      this.clearFaults();
      this.people.forEach((person, index) => Object.assign(person, places[index]));
    };
  }

  /**
   * What a person can take back with Undo, the last step last: "typed", or the calls of one sync, or of a whole run
   * with mergeUndoGroup (https://learn.microsoft.com/javascript/api/excel/excel.runoptions).
   */
  undoListOf(who: string): string[] {
    const list = this.undoLists.get(who) ?? [];
    this.undoLists.set(who, list);
    return list;
  }

  private readonly undoLists = new Map<string, string[]>();

  /** Keeps what cells held before each step, so that `undo` can take steps back; costs a copy of every cell a batch. */
  keepsCells = false;
  private cellsBefore: CellsBefore = new Map();
  private readonly cellsOfSteps = new Map<string, CellsBefore[]>();

  /** A person presses Undo: what cells held before the last step that is left, if one is. */
  undo(who: string): void {
    if (this.undoListOf(who).pop() === undefined) return;
    for (const [sheet, cells] of this.cellsOfSteps.get(who)?.pop() ?? [])
      for (const key of new Set([...cells.keys(), ...sheet.cells.keys()]))
        sheet.put(Math.floor(key / COLUMNS), key % COLUMNS, cells.get(key) ?? { value: "", type: "Empty" });
  }

  private copyCells(): CellsBefore {
    if (!this.keepsCells) return new Map();
    return new Map(this.book.sheets.map((sheet) => [sheet, new Map(sheet.cells)]));
  }

  private keepCells(who: string, cells: CellsBefore): void {
    this.cellsOfSteps.set(who, [...(this.cellsOfSteps.get(who) ?? []), cells]);
  }

  private readonly groups = new Map<string, { begun: boolean }>();

  /** Runs a batch of a person as one step to undo; the bundle of the npm package does not know mergeUndoGroup yet. */
  async merged<T>(who: string, run: () => Promise<T>): Promise<T> {
    this.groups.set(who, { begun: false });
    try {
      return await run();
    } finally {
      this.groups.delete(who);
    }
  }

  private async answer(person: (typeof this.people)[number], text: string): Promise<void> {
    await new Promise((resolve) => setImmediate(resolve));
    const { id, message, flags } = JSON.parse(text) as {
      id: number;
      flags: number;
      message: { body: WireBatch };
    };
    const waits = (flags & DELAY_FOR_CELL_EDIT) !== 0;
    const tidies = message.body.Actions.every((action) => isTidying(action, message.body));
    if (waits && !tidies && this.editing.has(person.name)) this.onWait.get(person.name)?.();
    if (waits) await this.editing.get(person.name);
    const number = ++this.batches;
    await this.beforeBatch?.(number, person.name);
    this.largestMessage = Math.max(this.largestMessage, text.length);
    let body =
      this.editing.has(person.name) && !waits
        ? failure("InvalidOperationInCellEditMode", "Excel is in cell-editing mode.", 0)
        : this.run(person, message.body, number, text.length);
    let reply = JSON.stringify(body);
    this.largestMessage = Math.max(this.largestMessage, reply.length);
    if (reply.length > this.messageLimit) {
      body = failure(
        "ResponsePayloadSizeLimitExceeded",
        "The response payload size has exceeded the limit.",
        0,
      );
      reply = JSON.stringify(body);
    }
    person.bridge.onMessageFromHost?.(
      JSON.stringify({ id, type: 1, message: { statusCode: 200, headers: {}, body: reply } }),
    );
  }

  private run(person: Person, batch: WireBatch, number: number, size: number): unknown {
    if (size > this.messageLimit)
      return failure(
        "RequestPayloadSizeLimitExceeded",
        "The request payload size has exceeded the limit.",
        0,
      );
    const objects = new Map<number, unknown>();
    const tidies = batch.Actions.every((action) => isTidying(action, batch));
    const results: { ActionId: number; Value: unknown }[] = [];
    this.changesOfBatch = new Set();
    this.cellsBefore = this.copyCells();
    for (const [index, action] of batch.Actions.entries()) {
      const name = action.Name || batch.ObjectPaths[action.ObjectPathId]?.Name || "";
      if (action.ActionType !== TRACE && !tidies) this.log.push({ batch: number, who: person.name, name });
      try {
        if (!tidies) this.strike(number, name);
        results.push({ ActionId: action.Id, Value: this.act(person, batch, objects, action) });
      } catch (error) {
        if (!(error instanceof HostFault)) return failure("NotInThisHost", String(error), index);
        this.addUndoStep(person.name);
        return {
          ...failure(error.code, error.message, index, error.location),
          Results: results,
        };
      }
    }
    this.addUndoStep(person.name);
    return { Results: results };
  }

  private changesOfBatch = new Set<string>();

  private addUndoStep(who: string): void {
    if (this.changesOfBatch.size === 0) return;
    const list = this.undoListOf(who);
    const group = this.groups.get(who);
    const changes = [...this.changesOfBatch].sort().join(" ");
    if (!group?.begun) this.keepCells(who, this.cellsBefore);
    if (group?.begun) list.push(`${list.pop() ?? ""} ${changes}`.trim());
    else list.push(changes);
    if (group) group.begun = true;
  }

  /** Before a call: what this copy of Excel refuses now, and what the call means for the list of steps to undo. */
  private before(person: Person, target: unknown, wireName: string, sets: boolean): void {
    const name = `${wireName[0].toLowerCase()}${wireName.slice(1)}`;
    const api = `${(target as object).constructor.name.replace(/Object$/, "")}.${name}`;
    const code = FAILS_BEHIND_ANOTHER_WORKBOOK[api];
    if (code && this.profile.platform !== "web" && this.away.has(person.name))
      throw new HostFault(code, "There was an internal error while processing the request.", api);
    const undo = undoOf(api, sets, this.profile);
    if (undo === "none") return;
    if (undo === "step") {
      this.changesOfBatch.add(api);
      return;
    }
    if (this.groups.has(person.name))
      throw new HostFault("UndoNotSupported", "The operation can't be part of an undo group.", api);
    this.undoListOf(person.name).length = 0;
    this.cellsOfSteps.delete(person.name);
    this.cellsBefore = this.copyCells();
    this.changesOfBatch.clear();
  }

  private strike(batch: number, name: string): void {
    for (const entry of this.faults) {
      const { fault } = entry;
      if (fault.batch !== undefined && fault.batch !== batch) continue;
      if (fault.name !== undefined && fault.name !== name) continue;
      entry.seen += 1;
      if (entry.seen <= (fault.after ?? 0) || entry.struck >= (fault.times ?? 1)) continue;
      entry.struck += 1;
      throw new HostFault(fault.code, fault.message ?? `Refused: ${name}`);
    }
  }

  private readonly references = new Map<string, unknown>();

  private act(person: Person, batch: WireBatch, objects: Map<number, unknown>, action: WireAction): unknown {
    if (action.ActionType === TRACE) return undefined;
    const target = this.find(person, batch, objects, action.ObjectPathId);
    if (action.ActionType === INSTANTIATE) return this.identity(target);
    if (target instanceof NullObject) {
      if (action.Name === "_KeepReference" || action.ActionType === QUERY) return null;
      throw new HostFault("InvalidObjectPath", "The object path isn't working for what you're trying to do.");
    }
    if (action.ActionType === QUERY) return describe(target, action.QueryInfo?.Select ?? []);
    const args = this.argumentsOf(person, batch, objects, action.ArgumentInfo);
    if (action.ActionType === METHOD) {
      this.before(person, target, action.Name, false);
      return plain(call(target, action.Name, args));
    }
    if (action.ActionType === SET) {
      mustHave(target, action.Name);
      this.before(person, target, action.Name, true);
      (target as Record<string, unknown>)[action.Name] = args[0];
      return undefined;
    }
    throw new Error(`The in-memory host knows no action ${action.ActionType}`);
  }

  private identity(target: unknown): unknown {
    if (target instanceof NullObject) return null;
    if (typeof target === "object" && target !== null && "keepsReference" in target) {
      const reference = `ref-${this.references.size + 1}`;
      this.references.set(reference, target);
      return { _ReferenceId: reference };
    }
    const id = (target as { Id?: unknown } | undefined)?.Id;
    return id === undefined ? {} : { Id: id };
  }

  private find(person: Person, batch: WireBatch, objects: Map<number, unknown>, pathId: number): unknown {
    if (objects.has(pathId)) return objects.get(pathId);
    const path = batch.ObjectPaths[pathId];
    const made = this.make(person, batch, objects, path);
    objects.set(pathId, made);
    return made;
  }

  private make(person: Person, batch: WireBatch, objects: Map<number, unknown>, path: WirePath): unknown {
    if (path.ObjectPathType === ROOT_PATH) return new WorkbookObject(person);
    if (path.ObjectPathType === REFERENCE_PATH) {
      const kept = this.references.get(path.Name);
      if (!kept)
        throw new HostFault("InvalidReference", "This reference isn't valid for the current operation.");
      return kept;
    }
    const parent = this.find(person, batch, objects, path.ParentObjectPathId!);
    if (parent instanceof NullObject) return parent;
    const args = this.argumentsOf(person, batch, objects, path.ArgumentInfo);
    if (path.ObjectPathType === INDEXER_PATH) return call(parent, "Indexer", args);
    if (path.ObjectPathType === METHOD_PATH) {
      this.before(person, parent, path.Name, false);
      return call(parent, path.Name, args);
    }
    if (path.ObjectPathType === PROPERTY_PATH) {
      mustHave(parent, path.Name);
      return (parent as Record<string, unknown>)[path.Name];
    }
    throw new Error(`The in-memory host knows no path of type ${path.ObjectPathType}`);
  }

  private argumentsOf(
    person: Person,
    batch: WireBatch,
    objects: Map<number, unknown>,
    info: WireArguments = {},
  ): unknown[] {
    return (info.Arguments ?? []).map((value, i) => {
      const pathId = info.ReferencedObjectPathIds?.[i];
      return pathId ? this.find(person, batch, objects, pathId) : value;
    });
  }
}

function tellSelection({ followsSelection, bridge }: Person & { bridge: HostBridge }, area: HostArea): void {
  if (!followsSelection) return;
  const entry = {
    messageCategory: EVENT_CATEGORY,
    messageType: SELECTED_EVENT,
    targetId: "Workbook",
    message: JSON.stringify({ worksheetId: area.sheet.id, address: areaAddress(area, false) }),
  };
  setTimeout(() => bridge.onMessageFromHost?.(JSON.stringify({ type: 3, message: { entries: [entry] } })), 0);
}

/** Giving back references after a run is never refused: that would be no failure of anything a person asked for. */
function isTidying({ ActionType, Name, ObjectPathId }: WireAction, { ObjectPaths }: WireBatch): boolean {
  const isThere = [ROOT_PATH, REFERENCE_PATH].includes(ObjectPaths[ObjectPathId]?.ObjectPathType);
  return (ActionType === INSTANTIATE && isThere) || ActionType === TRACE || Name === "_RemoveReference";
}

function failure(
  code: string,
  message: string,
  index: number,
  location = "",
): { Error: unknown; Results?: unknown } {
  return {
    Error: {
      Code: code,
      Message: message,
      Location: location,
      ActionIndex: index,
    },
  };
}

function mustHave(target: unknown, name: string): void {
  if (typeof target !== "object" || target === null || !(name in target))
    throw new Error(`The in-memory host has no ${(target as object)?.constructor?.name}.${name}`);
}

function call(target: unknown, name: string, args: unknown[]): unknown {
  mustHave(target, name);
  return (target as Record<string, (...args: unknown[]) => unknown>)[name](...args);
}

function plain(value: unknown): unknown {
  return typeof value === "object" && value !== null && !Array.isArray(value) ? {} : value;
}

/** The selected properties of an object, nested as the proxies expect them. */
function describe(target: unknown, select: readonly string[]): unknown {
  const items =
    target instanceof Collection ? target.items() : (target as { items?: () => unknown[] }).items?.();
  if (items) return { _Items: items.map((item) => describeOne(item, select)) };
  return describeOne(target, select);
}

function describeOne(target: unknown, select: readonly string[]): Record<string, unknown> {
  const result: Record<string, unknown> = {};
  const id = (target as { Id?: unknown }).Id;
  if (id !== undefined) result.Id = id;
  const nested = new Map<string, string[]>();
  for (const path of select) {
    const [first, ...rest] = path.replace(/^items\//, "").split("/");
    const name = first[0].toUpperCase() + first.slice(1);
    if (rest.length > 0) nested.set(name, [...(nested.get(name) ?? []), rest.join("/")]);
    else if (name !== "Items") {
      mustHave(target, name);
      result[name] = (target as Record<string, unknown>)[name];
    }
  }
  for (const [name, paths] of nested) {
    mustHave(target, name);
    const child = (target as Record<string, unknown>)[name];
    result[name] = child instanceof NullObject ? null : describe(child, paths);
  }
  return result;
}
