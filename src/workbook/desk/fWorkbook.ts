import type { FUniver } from "@univerjs/core/facade";

/** A workbook and a sheet as the engine gives them. */
export type FWorkbook = NonNullable<ReturnType<FUniver["getActiveWorkbook"]>>;
export type FWorksheet = ReturnType<FWorkbook["getActiveSheet"]>;
