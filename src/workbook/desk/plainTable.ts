import { BooleanNumber, BorderStyleTypes } from "@univerjs/core";

const RULE = { s: BorderStyleTypes.THIN, cl: { rgb: "#8b929a" } };

/** How every table of a file looks on the page: a quiet header, a rule above and below, no stripes. */
export const PLAIN_TABLE = {
  name: "table-plain",
  style: {
    headerRowStyle: {
      bg: { rgb: "#eceef0" },
      cl: { rgb: "#1f2326" },
      bl: BooleanNumber.TRUE,
      bd: { t: RULE, b: RULE },
    },
    lastRowStyle: { bd: { b: RULE } },
  },
};
