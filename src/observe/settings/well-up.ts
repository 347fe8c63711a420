/** What is called well up, and not a touch more bass: half of what a tone control has. From memory. */
const WELL_UP_DB = 5;
export const isWellUp = ({ bassDb }: { readonly bassDb: number }): boolean => bassDb >= WELL_UP_DB;

/** How often something is well up for taste and is not what distorts. An estimate. */
export const UP_ALL_THE_SAME_SHARE = 0.15;
