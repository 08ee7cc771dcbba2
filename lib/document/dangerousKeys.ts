/** Keys that reach into JavaScript's objects. */
export const dangerousKeys: ReadonlySet<string> = new Set(["__proto__", "constructor", "prototype"]);
