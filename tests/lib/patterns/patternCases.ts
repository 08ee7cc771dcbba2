import { makeCase } from "@/tests/fixtures/makeCase";

const closed = { status: "closed", outcome: "fixed" };
const root = (cause: string, part?: string) => ({ cause, role: "root", ...(part ? { part } : {}) });
const oiled = { repair: "clean-and-oil", result: "fixed" };

/** Five finished jobs and one still open, small enough to be counted by hand. */
export const patternCases = [
  makeCase({
    id: "a",
    ...closed,
    instrument: "cornet",
    maker: "Marrowby",
    received: "2024-01-10",
    closed: "2024-01-12",
    minutes: 30,
    quoted: { minutes: 40, price: 50 },
    charge: 50,
    causes: [root("gummed-oil", "piston 1")],
    path: [{ check: "valve-travel", part: "valve 1", found: "drags" }, oiled],
  }),
  makeCase({
    id: "b",
    ...closed,
    instrument: "cornet",
    maker: "Marrowby",
    received: "2024-02-01",
    closed: "2024-02-02",
    minutes: 60,
    quoted: { minutes: 40, price: 50 },
    charge: 60,
    swallowed: { minutes: 20, money: 25 },
    causes: [root("gummed-oil", "piston 2"), { cause: "casing-dented", role: "brought-on" }],
    path: [{ ...oiled, result: "harm" }],
    harms: [{ repair: "clean-and-oil", what: "Dropped.", minutes: 15, paidBy: "shop" }],
  }),
  makeCase({
    id: "c",
    ...closed,
    instrument: "euphonium",
    maker: "Corvane",
    received: "2025-03-01",
    closed: "2025-03-20",
    minutes: 200,
    quoted: { minutes: 100, price: 120 },
    causes: [root("casing-dented", "casing 1")],
    path: [{ repair: "ease-casing", result: "fixed" }],
  }),
  makeCase({
    id: "d",
    ...closed,
    instrument: "cornet",
    received: "2025-03-02",
    closed: "2025-03-03",
    minutes: 25,
    causes: [root("gummed-oil")],
    path: [oiled, oiled],
  }),
  makeCase({
    id: "e",
    ...closed,
    instrument: "euphonium",
    maker: "Marrowby",
    received: "2025-03-10",
    closed: "2025-03-20",
    minutes: 100,
    quoted: { minutes: 100, price: 120 },
    charge: 130,
    causes: [root("casing-dented", "casing 2")],
    path: [
      { check: "valve-travel", part: "valve 2", found: "hangs", where: "halfway" },
      { repair: "ease-casing", result: "better" },
    ],
  }),
  makeCase({
    id: "f",
    instrument: "cornet",
    maker: "Marrowby",
    received: "2025-03-15",
    causes: [root("gummed-oil")],
    path: [oiled],
  }),
];
