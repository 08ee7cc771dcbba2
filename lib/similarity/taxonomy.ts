/** A tree of ids with one root at depth 1. */
export interface Taxonomy {
  /** The ids given, in the order given; an implicit root is not among them. */
  readonly ids: readonly string[];
  /** Number of nodes from the root to the id, both counted: the root has 1. Throws RangeError for an id that is not in the tree. */
  depth(id: string): number;
  /** The ids above, nearest first, the root last; empty for the root. Throws as `depth` does. */
  ancestors(id: string): readonly string[];
  /** Whether the id is the ancestor or stands under it. Throws as `depth` does. */
  isA(id: string, ancestor: string): boolean;
  /** The deepest id that both stand under; either may be it. Throws as `depth` does. */
  lowestCommonAncestor(a: string, b: string): string;
}

/** One node as given; a node without a parent is a root. */
export interface TaxonomyNode {
  readonly id: string;
  readonly parent?: string;
}

/** Id of the root that is put over several roots. */
export const IMPLICIT_ROOT = "(root)";

function readParents(nodes: readonly TaxonomyNode[]): Map<string, string | undefined> {
  const parents = new Map<string, string | undefined>();
  for (const { id, parent } of nodes) {
    if (parents.has(id))
      throw new RangeError(`every id must stand once; got "${id}" twice; drop one of them`);
    parents.set(id, parent);
  }
  for (const [id, parent] of parents) {
    if (parent !== undefined && !parents.has(parent)) {
      throw new RangeError(
        `the parent of "${id}" must be a node; got "${parent}"; add it or mend its spelling`,
      );
    }
  }
  return parents;
}

function putUnderOneRoot(parents: Map<string, string | undefined>): void {
  const roots = [...parents].filter(([, parent]) => parent === undefined).map(([id]) => id);
  if (roots.length < 2) return;
  if (parents.has(IMPLICIT_ROOT)) {
    throw new RangeError(
      `no node may be called "${IMPLICIT_ROOT}" beside other roots; got ${roots.join(", ")}; rename it`,
    );
  }
  for (const root of roots) parents.set(root, IMPLICIT_ROOT);
  parents.set(IMPLICIT_ROOT, undefined);
}

/** The id and all above it, nearest first, for every id. */
function pathsToRoot(parents: ReadonlyMap<string, string | undefined>): Map<string, readonly string[]> {
  const paths = new Map<string, readonly string[]>();
  for (const start of parents.keys()) {
    const path = new Set<string>();
    for (let id: string | undefined = start; id !== undefined; id = parents.get(id)) {
      if (path.has(id)) {
        throw new RangeError(
          `no id may stand above itself; got ${[...path, id].join(" under ")}; take one parent away`,
        );
      }
      path.add(id);
    }
    paths.set(start, [...path]);
  }
  return paths;
}

/**
 * Build a taxonomy from its nodes; several roots are put under one implicit root, which then has depth 1.
 *
 * @param nodes at least one, in any order.
 * @returns the taxonomy; `lowestCommonAncestor` takes time in the depth of the tree.
 * @throws RangeError for no nodes, an id given twice, a parent that is not a node, a cycle.
 */
export function buildTaxonomy(nodes: readonly TaxonomyNode[]): Taxonomy {
  if (nodes.length === 0)
    throw new RangeError("a taxonomy must have a node; got none; give at least its root");
  const parents = readParents(nodes);
  putUnderOneRoot(parents);
  const paths = pathsToRoot(parents);
  const pathOf = (id: string): readonly string[] => {
    const path = paths.get(id);
    if (path === undefined) {
      throw new RangeError(`an id must be in the taxonomy; got "${id}"; add it or mend its spelling`);
    }
    return path;
  };
  return {
    ids: nodes.map(({ id }) => id),
    depth: (id) => pathOf(id).length,
    ancestors: (id) => pathOf(id).slice(1),
    isA: (id, ancestor) => {
      const above = pathOf(ancestor).length;
      const path = pathOf(id);
      return path[path.length - above] === ancestor;
    },
    lowestCommonAncestor: (a, b) => {
      const pathA = pathOf(a);
      const pathB = pathOf(b);
      let shared = Math.min(pathA.length, pathB.length);
      while (pathA[pathA.length - shared] !== pathB[pathB.length - shared]) shared -= 1;
      return pathA[pathA.length - shared] ?? a;
    },
  };
}
