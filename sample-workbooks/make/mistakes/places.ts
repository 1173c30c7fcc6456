/** The first vine of a row from that number on that takes the mistake. */
const inBlock = (block: string) => (row: number, vine: number) => ({ block, row, vine });

export const northBench = inBlock("North Bench");
export const creekSide = inBlock("Creek Side");
export const schoolhouse = inBlock("Schoolhouse");
