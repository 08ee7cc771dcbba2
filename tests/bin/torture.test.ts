import { expect, it } from "vitest";
import { commandTimeout, runBenchlore } from "./runBenchlore";

it("a case survives kills, a second program, outside edits, a full disk and a clock that goes back", {
  timeout: commandTimeout,
}, async () => {
  const { code, out } = await runBenchlore(["torture", "--short"]);
  const report = JSON.parse(out);
  expect(report.killed).toMatchObject({ halfWritten: 0, acknowledgedSavesLost: 0, revisionsDamaged: 0 });
  expect(report.killed.acknowledgedSaves).toBeGreaterThanOrEqual(25);
  expect(report.killed.kills).toBeGreaterThan(0);
  expect(report.together).toMatchObject({ linesLost: 0, linesTwice: 0 });
  expect(report.outside).toMatchObject({ conflictsFound: 12, outsideEditsLost: 0, formsLost: 0 });
  expect(report.fullDiskInjected).toMatchObject({ fileHurt: 0, filesLeftBehind: 0 });
  expect(report.fullDiskInjected.injected).toBeGreaterThan(5);
  expect(report.clock).toMatchObject({ versionsKept: 10, outOfOrder: 0 });
  expect([code, report.held]).toEqual([0, true]);
});
