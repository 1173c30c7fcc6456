/** Ways in which a spur can point. */
export const DIRECTIONS = ["down", "level", "up"] as const;
export type Direction = (typeof DIRECTIONS)[number];

/** The count of spurs that point each way. */
export const SPURS_POINTING = { down: "spursDown", level: "spursLevel", up: "spursUp" } as const;

/** What a spur is worth by where it points, each between 0 and 1. */
export type SpurWorth = Readonly<Record<Direction, number>>;

/** All that a training system decides. */
export interface TrainingSystem {
  /** Before a farm changes it on the Settings sheet. The order is common practice, the figures are ours. */
  readonly spurWorth: SpurWorth;
  /** Where a well placed spur points, the best way first. */
  readonly wellPlaced: readonly [Exclude<Direction, "level">, ...Direction[]];
  /** Spurs that point this way ask for a new cordon when there are too many of them. */
  readonly badlyPlaced: Direction;
  /** More than one row of wire over a vine: the vine spacing does not tell how much of it a cordon fills. */
  readonly divided: boolean;
}

/** The training systems: shoots down from a high wire, up between catch wires, or down in two curtains. */
export const TRAINING_SYSTEMS = {
  highWire: {
    spurWorth: { down: 1, level: 0.9, up: 0.4 },
    wellPlaced: ["down", "level"],
    badlyPlaced: "up",
    divided: false,
  },
  upright: {
    spurWorth: { down: 0.2, level: 0.6, up: 1 },
    wellPlaced: ["up"],
    badlyPlaced: "down",
    divided: false,
  },
  divided: {
    spurWorth: { down: 1, level: 0.9, up: 0.4 },
    wellPlaced: ["down", "level"],
    badlyPlaced: "up",
    divided: true,
  },
} as const satisfies Readonly<Record<string, TrainingSystem>>;

export type Training = keyof typeof TRAINING_SYSTEMS;

/** Ids of the training systems, in the order of the table. */
export const TRAININGS = Object.keys(TRAINING_SYSTEMS) as readonly Training[];

/**
 * Spurs of a cordon that point any of these ways, as far as they were counted.
 *
 * @example
 * spursPointing({ spursDown: 5, spursLevel: 2 }, ["down", "level"]) // 7
 */
export function spursPointing(
  cordon: Readonly<Partial<Record<(typeof SPURS_POINTING)[Direction], number>>>,
  ways: readonly Direction[],
): number {
  return ways.reduce((sum, way) => sum + (cordon[SPURS_POINTING[way]] ?? 0), 0);
}

/** The row of a training system. */
export const trainingSystem = (training: Training): TrainingSystem => TRAINING_SYSTEMS[training];
