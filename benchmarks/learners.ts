import { type LearnerSession, sessionSchema } from "@/lib/casebook/learners/learnerFile";
import { writeLearner } from "@/lib/casebook/learners/writeLearner";
import { seedRandom } from "./random";

/** Jobs that a learner has worked through, some of them several times. */
const sessionsEach = 25;
const dayMs = 86_400_000;
const firstDay = Date.UTC(2026, 0, 5);

/**
 * Writes learners' files, each with 25 sessions over half a year; the same seed gives the same bytes.
 *
 * @param cases ids to draw the jobs from
 * @param causes ids to draw what was said from
 */
export function* writeLearners(
  count: number,
  { seed, cases, causes }: Readonly<{ seed: number; cases: readonly string[]; causes: readonly string[] }>,
): Generator<Readonly<{ file: string; text: string }>> {
  const random = seedRandom(seed);
  for (let number = 1; number <= count; number++) {
    const id = `learner-${number}`;
    const sessions = Array.from({ length: sessionsEach }, (_, at): LearnerSession => {
      const sure = random.whole(1, 9) / 10;
      const isRight = random.chance(0.6);
      return sessionSchema.parse({
        case: random.pick(cases),
        day: new Date(firstDay + 7 * at * dayMs).toISOString().slice(0, 10),
        said: [{ cause: random.pick(causes), sure }],
        verdict: isRight ? "right" : "missed",
        // As many digits as are kept of a real one.
        score: Number((isRight ? (1 - sure) ** 2 : sure ** 2 + 1).toFixed(4)),
        checks: random.whole(1, 8),
        minutes: random.whole(2, 41),
        atStake: random.whole(0, 3),
        recordMinutes: random.whole(2, 41),
        recordAtStake: random.whole(0, 3),
        tooSoon: random.whole(0, 1),
      });
    });
    const fields = { id, name: `Learner ${number}`, demo: true, since: "2026-01-05", sessions };
    yield { file: `${id}.md`, text: writeLearner(fields, "") };
  }
}
