import { LexerTreeBuilder } from "@univerjs/preset-sheets-core";

interface LexerState {
  _resetTemp(): void;
  _squareBracketState: number;
  _tableBracketState: boolean;
  bracketsAreReset?: true;
}

/**
 * Between two formulas the engine's lexer (0.25.1) forgets every bracket but the square ones: after a half-typed
 * table reference each later formula lost the commas between its arguments. Forgetting those as well cures it.
 */
export function cureLexer(): void {
  const lexer = LexerTreeBuilder.prototype as unknown as LexerState;
  if (lexer.bracketsAreReset) return;
  const resetTheRest = lexer._resetTemp;
  lexer._resetTemp = function (this: LexerState) {
    resetTheRest.call(this);
    this._squareBracketState = 0;
    this._tableBracketState = false;
  };
  lexer.bracketsAreReset = true;
}
