/** A crew of two from Monday, 2 February 2026 (day 46,055), five hours on five days a week; second pass and thinning later. */
export const WINTER_CALENDAR = {
  startsOn: 46055,
  secondPassOn: 46127,
  thinningOn: 46162,
  crew: 2,
  hoursADay: 5,
  daysAWeek: 5,
  daysOff: [] as number[],
  minutesAVine: 6,
  minutesAVineThinning: 2,
  secondPassShare: 0.4,
};
