/** How the names of the small facts that Excel keeps for the add-in begin, in Excel and in a file that Excel saved. */
export const FLAG_PREFIX = "Cordonbook.";
