import type { Standing } from "@/lib/study/memory/standingOf";

/** What a teacher asked of the list of learners, as it stands in the address. */
export type LearnersQuery = Readonly<{ find: string; order: keyof typeof orders; page: number }>;

const byName = (a: Standing, b: Standing) => a.name.localeCompare(b.name, "en") || (a.id < b.id ? -1 : 1);
const share = ({ missed, nearly, jobs }: Standing) => (jobs === 0 ? 0 : (missed + nearly / 2) / jobs);

/** The orders in which learners can stand, each with its word. */
export const orders = {
  need: { label: "Most in need", compare: (a: Standing, b: Standing) => share(b) - share(a) || byName(a, b) },
  due: { label: "Most to see again", compare: (a: Standing, b: Standing) => b.due - a.due || byName(a, b) },
  last: {
    label: "Longest away",
    compare: (a: Standing, b: Standing) => compareDays(a.last, b.last) || byName(a, b),
  },
  name: { label: "By name", compare: byName },
} as const;

const compareDays = (a: string | null, b: string | null) => {
  const [left, right] = [a ?? "", b ?? ""];
  return left < right ? -1 : left > right ? 1 : 0;
};
const one = (value: string | readonly string[] | undefined) =>
  typeof value === "string" ? value : undefined;
const isOrder = (word: string | undefined): word is LearnersQuery["order"] =>
  word !== undefined && Object.hasOwn(orders, word);

/** Reads what was asked of the list; what cannot be read is passed over. */
export function readLearnersQuery(
  params: Readonly<Record<string, string | readonly string[] | undefined>>,
): LearnersQuery {
  const [order, page] = [one(params.order), one(params.page)];
  return {
    find: (one(params.find) ?? "").slice(0, 60),
    order: isOrder(order) ? order : "name",
    page: page !== undefined && /^[1-9]\d{0,5}$/.test(page) ? Number(page) : 1,
  };
}

/** The address of the list as asked. */
export const learnersHref = ({ find, order, page }: LearnersQuery) =>
  `/study/learners?${new URLSearchParams({ ...(find === "" ? {} : { find }), order, page: String(page) })}`;
