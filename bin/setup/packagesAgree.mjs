// @ts-check

/** @typedef {{ version?: string, integrity?: string, optional?: boolean, devOptional?: boolean }} LockEntry */
/** @typedef {{ packages?: Record<string, LockEntry> }} LockFile */

/**
 * Whether the packages that npm has put in place are the ones that the lock file asks for.
 *
 * @param {LockFile} wanted package-lock.json
 * @param {LockFile} present npm's own record, node_modules/.package-lock.json, which it writes once it is done
 * @returns {boolean} false when one is missing, left over or different; optional ones, made for other kinds of
 *   machine, may be missing
 */
export function packagesAgree(wanted, present) {
  const here = present.packages ?? {};
  const asked = wanted.packages ?? {};
  const places = Object.keys(asked).filter((place) => place !== "");
  return (
    places.length > 0 &&
    Object.keys(here).every((place) => place in asked) &&
    places.every((place) => entriesAgree(asked[place], here[place]))
  );
}

/**
 * @param {LockEntry | undefined} asked
 * @param {LockEntry | undefined} here
 */
function entriesAgree(asked, here) {
  if (here === undefined) return Boolean(asked?.optional || asked?.devOptional);
  return asked?.version === here.version && asked?.integrity === here.integrity;
}
