import { LexerTreeBuilder } from "@univerjs/preset-sheets-core";
import { STOOD_FOR, withoutParenthesesInNames } from "./withoutParenthesesInNames";

interface LexerState {
  _resetTemp(): void;
  _nodeMaker(formula: string, sequence?: unknown[], index?: number): unknown;
  _pushSegment(value: string): void;
  _addSequenceArray(sequence: unknown[] | undefined, value: string, at: number): void;
  _squareBracketState: number;
  _tableBracketState: boolean;
  isCured?: true;
}

/**
 * Cures two faults of the engine's lexer (0.25.1).
 *
 * Between two formulas it forgets every bracket but the square ones: after a half-typed table reference each later
 * formula lost the commas between its arguments. Forgetting those as well cures it.
 *
 * A parenthesis in a column's name, as in Vines[Prunings (lb)], it takes for one of the formula's own, so that such a
 * reference is #VALUE!. Those parentheses are handed to it as other characters and given back as it reads them.
 */
export function cureLexer(): void {
  const lexer = LexerTreeBuilder.prototype as unknown as LexerState;
  if (lexer.isCured) return;
  const { _resetTemp, _nodeMaker, _pushSegment, _addSequenceArray } = lexer;
  lexer._resetTemp = function (this: LexerState) {
    _resetTemp.call(this);
    this._squareBracketState = 0;
    this._tableBracketState = false;
  };
  lexer._nodeMaker = function (this: LexerState, formula, sequence, index) {
    return _nodeMaker.call(this, withoutParenthesesInNames(formula), sequence, index);
  };
  lexer._pushSegment = function (this: LexerState, value) {
    _pushSegment.call(this, STOOD_FOR[value] ?? value);
  };
  lexer._addSequenceArray = function (this: LexerState, sequence, value, at) {
    _addSequenceArray.call(this, sequence, STOOD_FOR[value] ?? value, at);
  };
  lexer.isCured = true;
}
