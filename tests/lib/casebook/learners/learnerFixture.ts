import { writeFileSync } from "node:fs";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

/** A learner's file as one might have put it together by hand, with a field and a note that nobody here knows. */
export const goodLearner = `---
id: ada-brook
name: Ada Brook
since: 2026-03-01
bench: by the window
sessions:
  - { case: 24-001, day: 2026-03-01, said: [ { cause: casing-dented, sure: 0.6 } ], verdict: right, score: 0.164, checks: 3, minutes: 10, atStake: 1, recordMinutes: 12, recordAtStake: 1, tooSoon: 0 }
---

Likes to begin with the springs.
`;

/** That file in a folder of its own. */
export function keptLearner() {
  const place = keepingPlace(temporaryFolder(), "ada-brook");
  writeFileSync(place.path, goodLearner);
  return place;
}
