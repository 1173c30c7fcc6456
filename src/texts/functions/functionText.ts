import type { Text } from "../language";

/** The texts of one CORDON function. */
export interface FunctionText {
  /** One or two sentences: what it answers and when a person wants it. */
  readonly description: Text;
  /** By parameter id: the name shown in the formula bar and one sentence. */
  readonly parameters: Readonly<Record<string, ParameterText>>;
  /** By result column: what the number is. */
  readonly results: Readonly<Record<string, Text>>;
}

export interface ParameterText {
  readonly label: Text;
  readonly description: Text;
}
