import { searchOptions } from "./searchOptions";

/** What a word counts in each field, in the order of `searchOptions.fields`. */
export const fieldBoosts: readonly number[] = searchOptions.fields.map(
  (field) => searchOptions.searchOptions.boost[field],
);
