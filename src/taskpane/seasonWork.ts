/** What reads, checks and decides a season. */
export { readSeason } from "../survey/reading/readSeason";
export { checkSeason, inSheetOrder } from "../survey/checks/checkSeason";
export { decideSeason } from "../survey/decide/decideSeason";
