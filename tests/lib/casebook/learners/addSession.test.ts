import { spawn } from "node:child_process";
import { readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { realDisk } from "@/lib/casebook/keeping/disk";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { listRevisions } from "@/lib/casebook/keeping/listRevisions";
import { addSession, mostKeptVersions } from "@/lib/casebook/learners/addSession";
import { readLearner } from "@/lib/casebook/learners/readLearner";
import { session } from "@/tests/lib/study/memory/sessions";
import { failingDisk } from "../keeping/keepingFixture";
import { goodLearner, keptLearner } from "./learnerFixture";

const keeper = { nowMs: Date.UTC(2026, 2, 2), mark: "a" };
const casesIn = (path: string) =>
  readLearner(readFileSync(path, "utf8"), "ada-brook.md").learner?.sessions.map((one) => one.case);

describe("a session that is added to a learner's file", () => {
  it("stands after those before it; what nobody here knows stays", () => {
    const place = keptLearner();
    expect(addSession(session({ case: "24-002" }), place, keeper).kind).toBe("kept");
    expect(casesIn(place.path)).toEqual(["24-001", "24-002"]);
    const text = readFileSync(place.path, "utf8");
    expect(text).toContain("bench: by the window");
    expect(text).toContain("Likes to begin with the springs.");
  });

  it("counts once a day: the first answer stands, the next day's stands beside it", () => {
    const place = keptLearner();
    const again = session({ score: 0, said: [{ cause: "casing-dented", sure: 1 }] });
    expect(addSession(again, place, keeper).kind).toBe("already there");
    expect(readFileSync(place.path, "utf8")).toBe(goodLearner);
    expect(addSession({ ...again, day: "2026-03-02" }, place, keeper).kind).toBe("kept");
    expect(casesIn(place.path)).toEqual(["24-001", "24-001"]);
  });

  it("is added to what an editor wrote in the very moment before", () => {
    const place = keptLearner();
    let edited = false;
    const disk = {
      ...realDisk,
      writeWhole: (path: string, bytes: Uint8Array) => {
        // The lock is written before the file is read; what is written next is what it was read for.
        if (!edited && path.endsWith(".half")) {
          edited = true;
          writeFileSync(place.path, goodLearner.replace("by the window", "by the door"));
        }
        realDisk.writeWhole(path, bytes);
      },
    };
    expect(addSession(session({ case: "24-002" }), place, { ...keeper, disk }).kind).toBe("kept");
    expect(casesIn(place.path)).toEqual(["24-001", "24-002"]);
    expect(readFileSync(place.path, "utf8")).toContain("by the door");
  });

  it.each([
    ["a broken file", (path: string) => writeFileSync(path, "---\nid: ada-brook\n---\n")],
    ["a file that is gone", (path: string) => rmSync(path)],
  ])("is refused by %s, which stays as it is", (_, spoil) => {
    const place = keptLearner();
    spoil(place.path);
    const names = () => readdirSync(place.folder).filter((name) => name !== ".revisions");
    const before = names();
    expect(addSession(session({ case: "24-002" }), place, keeper).kind).toBe("refused");
    expect(names()).toEqual(before);
  });

  it("is refused by a full disk, and the file stands as it did", () => {
    const place = keptLearner();
    const added = addSession(session({ case: "24-002" }), place, { ...keeper, disk: failingDisk("ENOSPC") });
    expect(added).toMatchObject({ kind: "refused", problems: [{ received: "a full disk" }] });
    expect(readFileSync(place.path, "utf8")).toBe(goodLearner);
  });

  it("leaves a few versions to go back to, and not every one that ever was", () => {
    const place = keptLearner();
    for (let number = 2; number < 12; number++)
      addSession(session({ case: `24-0${number}` }), place, { ...keeper, nowMs: keeper.nowMs + number });
    expect(listRevisions(place)).toHaveLength(mostKeptVersions);
    expect(casesIn(place.path)).toHaveLength(11);
  });

  it("is never lost, however many programs add at once", async () => {
    const place = keptLearner();
    const start = join(place.folder, "start");
    const program = fileURLToPath(new URL("addOnce.ts", import.meta.url));
    const adders = ["one", "two", "three"].map((mark) => {
      const child = spawn(process.execPath, ["--import", "tsx", program, place.folder, start, mark]);
      let told = "";
      const ready = new Promise<void>((resolve) => {
        child.stdout.on("data", (words) => {
          told += words;
          if (told.startsWith("ready\n")) resolve();
        });
      });
      const done = new Promise<string>((resolve) => child.on("close", () => resolve(told)));
      return { ready, done };
    });
    await Promise.all(adders.map(({ ready }) => ready));
    writeFileSync(start, "");
    const told = await Promise.all(adders.map(({ done }) => done));
    expect(told).toEqual(Array(3).fill(`ready\n${"kept\n".repeat(5)}`));
    const all = ["one", "two", "three"].flatMap((mark) => [1, 2, 3, 4, 5].map((at) => `${mark}-${at}`));
    expect([...(casesIn(place.path) ?? [])].sort()).toEqual(["24-001", ...all].sort());
  }, 60_000);

  it("has no place but a learner's own", () => {
    expect(() => keepingPlace("/learners", "../ada")).toThrow("id must be");
  });
});
