/**
 * The calculations over whole tables as the registry calls them. All are at hand here; a build of the add-in puts
 * fetchedTables.ts in place of this file.
 */
export * from "./tableCalculations";

/** What has to come before the first call; undefined once it is here. */
export const bringTables = (): Promise<void> | undefined => undefined;
