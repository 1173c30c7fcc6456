import metadata from "../../functions/expected/functions.json";
import type { CustomFunctionsRuntime } from "../../../src/workbook/excel/associateFunctions";
import { loadPage, type HostBridge } from "./excelProxies";

/** What Excel is told of one call: values, or the error that the cell shows with its sentence. */
export interface FunctionAnswer {
  readonly values?: readonly (readonly unknown[])[];
  readonly error?: string;
  readonly sentence?: string;
}

export interface FunctionsRuntime {
  /** The global CustomFunctions of the page. */
  readonly customFunctions: CustomFunctionsRuntime;
  /**
   * Excel calls a function: ranges and single cells as rows of cells, an omitted argument as null. Error cells are
   * handed over only where functions.json allows them for the whole file; else the function is not called.
   */
  call(
    id: string,
    args: readonly unknown[],
    how?: { cancelable?: boolean; addresses?: readonly (string | null)[] },
  ): Promise<FunctionAnswer>;
  /** Excel takes a cancelable call back. */
  cancel(invocation: number): void;
  /** Characters of the largest message that went to Excel. */
  largestAnswer(): number;
}

interface WireAction {
  readonly Id: number;
  readonly Name: string;
  readonly ArgumentInfo?: { readonly Arguments?: readonly unknown[] };
}

type WireResult = readonly [id: number, done: boolean, value: unknown, code: unknown];

const INVOKE = 1000;
const CANCEL = 1001;
const CANCELABLE = 1;
const ALLOWS_ERRORS = 4;
/** Numbers of errors on the wire, as the runtime of the pinned package writes them. */
const ERRORS: Readonly<Record<number, string>> = { 1: "#N/A", 7: "#VALUE!" };

/**
 * Microsoft's own custom functions runtime from the pinned npm package, driven as Excel drives it. The hook is the
 * one of excelProxies.ts; that the runtime answers at all is what each test proves anew.
 */
export function functionsRuntime(): FunctionsRuntime {
  const mappings: Record<string, unknown> = {};
  const requirements = { isSetSupported: () => true };
  const page = loadPage({
    CustomFunctionMappings: {},
    CustomFunctions: {
      _association: { mappings, onchange: () => undefined },
      associate: (id: string, bound: unknown) => void (mappings[id.toUpperCase()] = bound),
    },
    Office: {
      onReady: (ready?: (info: { host: string }) => void) => {
        ready?.({ host: "Excel" });
        return Promise.resolve({ host: "Excel" });
      },
      HostType: { Excel: "Excel" },
      context: { requirements },
      actions: { _association: { mappings: {} } },
    },
  }) as unknown as {
    CustomFunctions: CustomFunctionsRuntime & { _association: unknown };
    OfficeExtension: { HostBridge: { init(bridge: HostBridge): void } };
  };
  const waiting = new Map<number, (answer: FunctionAnswer) => void>();
  let largest = 0;
  const bridge: HostBridge = {
    sendMessageToHost(text) {
      const { id, message } = JSON.parse(text) as {
        id: number;
        message: { body: { Actions: WireAction[] } };
      };
      const { Actions } = message.body;
      largest = Math.max(largest, text.length);
      for (const { Name, ArgumentInfo } of Actions)
        if (Name === "SetInvocationArrayResults")
          for (const result of ArgumentInfo?.Arguments?.[0] as readonly WireResult[]) {
            waiting.get(result[0])?.(answerOf(result));
            waiting.delete(result[0]);
          }
      const Results = Actions.map(({ Id, Name }) => ({
        ActionId: Id,
        Value: Name === "_GetEnabledFeatures" ? [1, 2, 3, 4] : null,
      }));
      const reply = { statusCode: 200, headers: {}, body: JSON.stringify({ Results }) };
      setImmediate(() => bridge.onMessageFromHost?.(JSON.stringify({ id, type: 1, message: reply })));
    },
  };
  page.OfficeExtension.HostBridge.init(bridge);
  let invocations = 0;
  const tell = (messageType: number, message: unknown) =>
    bridge.onMessageFromHost?.(
      JSON.stringify({ type: 3, message: { entries: [{ messageCategory: 1, messageType, message }] } }),
    );
  return {
    customFunctions: page.CustomFunctions,
    call(id, args, { cancelable = false, addresses } = {}) {
      const invocation = ++invocations;
      const errors = (metadata as { allowErrorForDataTypeAny?: boolean }).allowErrorForDataTypeAny === true;
      if (!errors && JSON.stringify(args).includes("CustomFunctionError"))
        return Promise.resolve({ error: "not called" });
      const flags = (errors ? ALLOWS_ERRORS : 0) + (cancelable ? CANCELABLE : 0);
      return new Promise((resolve) => {
        waiting.set(invocation, resolve);
        tell(INVOKE, [invocation, id, args, "Sheet1!A1", flags, addresses]);
      });
    },
    cancel: (invocation) => tell(CANCEL, { invocationId: invocation }),
    largestAnswer: () => largest,
  };
}

function answerOf([, done, value, code]: WireResult): FunctionAnswer {
  if (done) return { values: value as unknown[][] };
  return { error: ERRORS[code as number] ?? `error ${String(code)}`, sentence: String(value) };
}
