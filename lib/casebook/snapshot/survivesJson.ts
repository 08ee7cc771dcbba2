/**
 * Tells whether a value comes back from JSON as it was: YAML has numbers (infinite ones, none, minus zero) that do not.
 */
export function survivesJson(value: unknown): boolean {
  switch (typeof value) {
    case "string":
    case "boolean":
      return true;
    case "number":
      return Number.isFinite(value) && !Object.is(value, -0);
    case "object":
      if (value === null) return true;
      return Array.isArray(value) ? value.every(survivesJson) : Object.values(value).every(survivesJson);
    default:
      return false;
  }
}
