import { Section } from "@/app/_components/Section";
import { AskFinder } from "./AskFinder";
import type { AskGroup } from "./askGroups";
import { type StudyQuery, sessionFields } from "./studyQuery";

type Props = Readonly<{ groups: readonly AskGroup[]; query: StudyQuery }>;

/** The checks that can be asked for; what is not open yet says what has to come before it. */
export function AskList({ groups, query }: Props) {
  return (
    <Section
      title="Ask for a check"
      id="ask"
      className="unprinted"
      aside="it answers at once, and the minutes are spent"
    >
      {groups.length === 0 ? (
        <p className="soft">There is nothing left to ask for. Say what you think it is.</p>
      ) : (
        <AskFinder groups={groups} fields={sessionFields(query)} find={query.find} from={query.from} />
      )}
    </Section>
  );
}
