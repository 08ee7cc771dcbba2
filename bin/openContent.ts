import { type OpenBench, openBench } from "@/lib/consult/bench/openBench";
import { ContentFault } from "@/lib/document/contentFault";
import { fail } from "./fail";

/** Opens the bench over the content, or ends the command with one line where there is nothing to open. */
export function openContent(environment: Readonly<Record<string, string | undefined>>): OpenBench {
  try {
    return openBench(environment);
  } catch (error) {
    if (error instanceof ContentFault) return fail(1, error.message);
    throw error;
  }
}
