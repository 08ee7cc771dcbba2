import type { Instrument } from "@/lib/vocabulary/instrument";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** One choice of the instrument list. */
export type InstrumentOption = Readonly<{ id: string; label: string }>;
export type InstrumentGroup = Readonly<{ label: string; options: readonly InstrumentOption[] }>;

/** The instruments to choose from, family by family as the vocabulary orders them; what the trade does not cover is left out. */
export function instrumentOptions({
  instruments,
}: Pick<Vocabulary, "instruments">): readonly InstrumentGroup[] {
  const covered = [...instruments.values()].filter(({ outside }) => !outside);
  const childrenOf = (id: string) => covered.filter(({ parent }) => parent === id);
  const below = (id: string): Instrument[] => childrenOf(id).flatMap((child) => [child, ...below(child.id)]);
  const option = ({ id, label }: Instrument): InstrumentOption => ({ id, label });
  const families = covered.filter(
    ({ id, parent }) =>
      parent !== undefined && childrenOf(id).length > 0 && isSecondTier(instruments, parent),
  );
  const grouped = new Set(families.flatMap(({ id }) => [id, ...below(id).map((child) => child.id)]));
  const rest = covered.filter(({ id }) => !grouped.has(id));
  return [
    ...families.map((family) => ({
      label: family.label,
      options: [family, ...below(family.id)].map(option),
    })),
    { label: "Others", options: rest.map(option) },
  ].filter(({ options }) => options.length > 0);
}

/** Root, then brass and woodwind, then the families that a list is grouped by. */
function isSecondTier(instruments: Vocabulary["instruments"], id: string): boolean {
  const parent = instruments.get(id)?.parent;
  return parent !== undefined && instruments.get(parent)?.parent === undefined;
}
