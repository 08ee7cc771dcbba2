import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { parse } from "csv-parse/sync";
import type { BrowserContext, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningApp, startApp } from "./server";

const firstDay = "2026-03-01";
/** Long enough to start the app three times on a busy machine. */
const threeStarts = 240_000;

let app: RunningApp;
beforeAll(async () => {
  app = await startApp({ today: firstDay });
});
afterAll(async () => {
  await app.stop();
});

/** Ends the app and starts it again over the same content, on another day. */
async function startAgain(today: string): Promise<void> {
  const { content } = app;
  await app.stop({ keepContent: true });
  app = await startApp({ content, today });
}

async function visit(path: string, context: BrowserContext): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(app.address + path);
  return page;
}

const plain = () => app.browser.newContext({ javaScriptEnabled: false });

async function sayName(page: Page, name: string): Promise<void> {
  await page.getByLabel("Your name").fill(name);
  await page.getByRole("button", { name: "Go on" }).click();
  await page.getByText("no job worked through yet").waitFor();
}

async function answer(page: Page, path: string, cause: string, sure: string): Promise<void> {
  await page.goto(`${app.address}${path}&ask=valve-travel`);
  await page.getByLabel("Likeliest cause", { exact: true }).selectOption(cause);
  await page.getByLabel("how sure of: likeliest cause").fill(sure);
  await page.getByRole("button", { name: "That is my answer" }).click();
  await page.getByRole("heading", { name: /^It was: / }).waitFor();
}

/** The complaints of the jobs that are to be seen again today, in their order. */
async function toSeeAgain(cookies: Awaited<ReturnType<BrowserContext["cookies"]>>): Promise<string[]> {
  const context = await plain();
  await context.addCookies(cookies);
  const page = await visit("/study", context);
  const complaints = await page
    .getByRole("region", { name: "To see again" })
    .locator("li a > span")
    .allTextContents();
  await context.close();
  return complaints;
}

const dented = "Second valve stops a third of the way down since a music stand was shut in the case with it.";
const pushed = "Second valve stops half way since the trumpet was carried through a narrow door.";

describe("A learner", () => {
  it(
    "has what was missed come back when its day comes, and keeps it over a restart of the server, all without JavaScript",
    async () => {
      const context = await plain();
      const page = await visit("/study", context);
      await sayName(page, "Ada Brook");
      await answer(page, "/study?case=23-085", "casing-dented", "70");
      expect(await page.getByText(/^Kept for Ada Brook/).textContent()).toContain("Got it cleanly");
      await answer(page, "/study?case=24-004", "casing-dented", "60");
      expect(await page.getByText(/^Kept for Ada Brook/).textContent()).toContain(
        "comes back on 2 March 2026",
      );
      // Answered once more with the answer known: the first stands.
      await answer(page, "/study?case=24-004", "casing-pushed", "100");
      expect(await page.getByText(/^This answer is not kept/).textContent()).toContain("stands: Missed");
      const file = join(app.content, "learners", "ada-brook.md");
      const kept = readFileSync(file, "utf8");
      expect(kept.match(/case: 24-004/g)).toHaveLength(1);
      const cookies = await context.cookies();
      expect(await toSeeAgain(cookies)).toEqual([]);
      await page.goto(`${app.address}/study`);
      // The one got cleanly waits longer than the one that was missed.
      await page.getByText("Later: 1 on 2 March 2026, 1 on 9 March 2026.").waitFor();

      await startAgain("2026-03-02");
      expect(await toSeeAgain(cookies)).toEqual([pushed]);
      await startAgain("2026-03-09");
      expect(readFileSync(file, "utf8")).toBe(kept);
      expect(await toSeeAgain(cookies)).toEqual([pushed, dented]);

      // Seen again and got: it goes, and the other stays.
      const later = await plain();
      await later.addCookies(cookies);
      const again = await visit("/study", later);
      await again.getByRole("link", { name: "See the first of them again" }).click();
      await answer(again, `/study?${new URL(again.url()).searchParams}`, "casing-pushed", "80");
      expect(await toSeeAgain(cookies)).toEqual([dented]);
      await again.getByRole("link", { name: "See the next one again" }).click();
      expect(await again.locator("main").textContent()).toContain(dented);
      await later.close();
    },
    threeStarts,
  );

  it("sees how they stand by family and by cause, and the teacher sees everybody", async () => {
    const context = await plain();
    const page = await visit("/study/learners", context);
    const row = page.getByRole("row", { name: /^Ada Brook/ });
    // The one that was missed was got since.
    expect(await row.getByRole("cell").allTextContents()).toEqual(["2", "2 got", "1", "9 March 2026"]);
    await page.getByRole("link", { name: "Ada Brook" }).click();
    await page.getByRole("heading", { name: "Ada Brook", level: 1 }).waitFor();
    const causes = page.getByRole("region", { name: "By cause" });
    expect(await causes.getByRole("rowheader").allTextContents()).toEqual(
      expect.arrayContaining(["Casing dented", "Casing wall pushed in by a tube or bow"]),
    );
    const families = page.getByRole("region", { name: "By family" });
    expect(await families.getByRole("rowheader").allTextContents()).toEqual(["Piston-valve brass"]);
    await context.close();
  });

  it("gives everything away as a table and as JSON", async () => {
    const table = await fetch(`${app.address}/study/learners/export?as=csv`);
    expect(table.headers.get("content-disposition")).toBe('attachment; filename="sessions.csv"');
    const rows = parse<Readonly<{ learner: string }>>(await table.text(), { columns: true });
    // The two learners of the demo stand there, too.
    expect(rows.filter(({ learner }) => learner === "ada-brook")).toMatchObject([
      { learner: "ada-brook", case: "23-085", went: "got it cleanly", day: firstDay },
      { learner: "ada-brook", case: "24-004", went: "missed", day: firstDay },
      { learner: "ada-brook", case: "24-004", day: "2026-03-09" },
    ]);
    const own = await fetch(`${app.address}/study/learners/export?as=json&learner=ada-brook`);
    expect(await own.json()).toMatchObject([{ learner: "ada-brook", sessions: [{}, {}, {}] }]);
    expect((await fetch(`${app.address}/study/learners/export?learner=nobody`)).status).toBe(404);
  });

  it("is told when an answer could not be kept, and loses nothing of the feedback", async () => {
    const context = await plain();
    const page = await visit("/study", context);
    await sayName(page, "Bo Lind");
    const file = join(app.content, "learners", "bo-lind.md");
    const whole = readFileSync(file, "utf8");
    // The page before the answer was drawn from a sound file; it is spoiled only then.
    await page.goto(`${app.address}/study?case=23-085&ask=valve-travel`);
    writeFileSync(file, whole.replace("since:", "since: never\nonce:"));
    await page.getByLabel("Likeliest cause", { exact: true }).selectOption("casing-dented");
    await page.getByLabel("how sure of: likeliest cause").fill("70");
    await page.getByRole("button", { name: "That is my answer" }).click();
    await page.getByRole("heading", { name: /^It was: / }).waitFor();
    await page.getByRole("heading", { name: "This answer was not kept" }).waitFor();
    await page.goto(`${app.address}/study`);
    await page.getByRole("heading", { name: "Your file cannot be read" }).waitFor();
    await page.getByRole("link", { name: "All learners" }).first().click();
    expect(await page.locator("main").textContent()).toContain("bo-lind.md:5 since");
    writeFileSync(file, whole);
    await context.close();
  });

  it("shows no word of the scheduler that works out the days", async () => {
    const context = await plain();
    for (const path of ["/study", "/study/learners", "/study/learners/ada-brook"]) {
      const page = await visit(path, context);
      expect(await page.locator("main").textContent()).not.toMatch(
        /\b(Again|Hard|Good|Easy|Learning|Relearning|Review|Lapses?|[Ss]tability)\b/,
      );
    }
    await context.close();
  });

  it("works through a whole job by keyboard alone, and it is kept", async () => {
    const context = await app.browser.newContext();
    const page = await visit("/study", context);
    const tabTo = async (name: RegExp) => {
      for (let stop = 0; stop < 200; stop++) {
        await page.keyboard.press("Tab");
        const words = await page.evaluate(() => {
          const at = document.activeElement;
          const label =
            at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels?.[0] : at;
          return (label?.textContent ?? "").replace(/\s+/g, " ").trim();
        });
        if (name.test(words)) return;
      }
      throw new Error(`a stop named ${name} must be reached by Tab; it was not; look at the page`);
    };
    await tabTo(/^Your name$/);
    await page.keyboard.type("Kit Moor");
    await page.keyboard.press("Enter");
    await page.getByText("no job worked through yet").waitFor();
    await tabTo(/^Dents that mislead/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Dents that mislead", level: 1 }).waitFor();
    await tabTo(/^Begin$/);
    await page.keyboard.press("Enter");
    await page.waitForURL(/lesson=dents-that-mislead&case=22-099/);
    await tabTo(/^Find a check$/);
    await page.keyboard.type("spring");
    await tabTo(/^1 minLook at the spring|Look at the spring/);
    await page.keyboard.press("Enter");
    await page.waitForURL(/ask=/);
    await tabTo(/^Likeliest cause/);
    await page.keyboard.press("ArrowDown");
    await tabTo(/how sure of: likeliest cause/);
    await page.keyboard.type("40");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: /^It was: / }).waitFor();
    await page.getByText(/^Kept for Kit Moor/).waitFor();
    await tabTo(/^Next job of the lesson$/);
    await page.keyboard.press("Enter");
    await page.waitForURL(/lesson=dents-that-mislead&case=23-061/);
    await context.close();
  });

  it("works through a whole job by touch on a phone, and it is kept", async () => {
    const context = await app.browser.newContext({ hasTouch: true, viewport: { width: 390, height: 844 } });
    const page = await visit("/study", context);
    await page.getByLabel("Your name").fill("Tam Hale");
    await page.getByRole("button", { name: "Go on" }).tap();
    await page.getByText("no job worked through yet").waitFor();
    await page.getByRole("link", { name: /^Saxophone/ }).tap();
    await page.waitForURL(/case=/);
    await page.locator("#ask summary").nth(1).tap();
    await page.locator("#ask details[open] a[href*='ask=']").first().tap();
    await page.waitForURL(/ask=/);
    await page.getByLabel("Likeliest cause", { exact: true }).selectOption({ index: 1 });
    await page.getByLabel("how sure of: likeliest cause").fill("30");
    await page.getByRole("button", { name: "That is my answer" }).tap();
    await page.getByText(/^Kept for Tam Hale/).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    await context.close();
  });
});

describe("A lesson", () => {
  it("is built, changed and gone through without JavaScript", async () => {
    const context = await plain();
    const page = await visit("/study/lessons/build", context);
    await page.getByRole("button", { name: "Keep this lesson" }).click();
    const alert = page.getByRole("alert");
    expect(await alert.textContent()).toContain("At least one job must be in it");
    await page.getByLabel("Title").fill("Slow valves: first things");
    await page.getByLabel("A word of introduction").fill("Oil is **not** a finding.");
    await page.getByLabel("Words").fill("21-037");
    await page.getByRole("button", { name: "Look for them" }).click();
    await page.getByRole("button", { name: /^Add ?: / }).click();
    await page.getByLabel("Words").fill("21-088");
    await page.getByRole("button", { name: "Look for them" }).click();
    await page.getByRole("button", { name: /^Add ?: / }).click();
    expect(await page.getByLabel("Title").inputValue()).toBe("Slow valves: first things");
    await page.getByRole("button", { name: /^Up ?: / }).click();
    await page.getByRole("button", { name: "Keep this lesson" }).click();
    await page.getByRole("heading", { name: "Slow valves: first things", level: 1 }).waitFor();
    const file = join(app.content, "lessons", "slow-valves-first-things.md");
    expect(readFileSync(file, "utf8")).toBe(
      '---\nid: slow-valves-first-things\ntitle: "Slow valves: first things"\ndemo: false\ncases:\n  - 21-088\n  - 21-037\n---\n\nOil is **not** a finding.\n',
    );
    expect(await page.locator("main strong").textContent()).toBe("not");
    await page.getByRole("link", { name: "Begin" }).click();
    expect(new URL(page.url()).searchParams.get("case")).toBe("21-088");
    expect(await page.locator("main").textContent()).toContain("job 1 of 2");
    await answer(page, `/study?${new URL(page.url()).searchParams}`, "grit", "60");
    await page.getByRole("link", { name: "Next job of the lesson" }).click();
    expect(new URL(page.url()).searchParams.get("case")).toBe("21-037");
    await context.close();
  });

  it("overwrites nothing that another teacher wrote meanwhile, and shows both", async () => {
    const context = await plain();
    const page = await visit("/study/lessons/build?lesson=leaks-and-needles", context);
    const file = join(app.content, "lessons", "leaks-and-needles.md");
    const theirs = readFileSync(file, "utf8").replace("Six clarinets", "Half a dozen clarinets");
    writeFileSync(file, theirs);
    await page.getByLabel("Title").fill("Clarinets in the right order");
    await page.getByRole("button", { name: "Keep this lesson" }).click();
    await page.getByText("This lesson was changed elsewhere meanwhile").waitFor();
    expect(readFileSync(file, "utf8")).toBe(theirs);
    await page.getByRole("link", { name: "Go on with mine, to put it in its place" }).click();
    expect(await page.getByLabel("Title").inputValue()).toBe("Clarinets in the right order");
    await page.getByRole("button", { name: "Keep this lesson" }).click();
    await page.getByRole("heading", { name: "Clarinets in the right order", level: 1 }).waitFor();
    expect(readFileSync(file, "utf8")).toContain("Six clarinets");
    expect(
      readdirSync(join(app.content, "lessons", ".revisions", "leaks-and-needles")).length,
    ).toBeGreaterThan(2);
    await context.close();
  });
});

describe("Pages of learners and lessons", () => {
  const paths = [
    "/study",
    "/study/learners",
    "/study/learners/ada-brook",
    "/study/lessons/dents-that-mislead",
    "/study/lessons/build?lesson=dents-that-mislead",
    "/study/lessons/build?tried=yes",
    "/casebook/24-004",
    "/casebook/21-009",
  ];
  it.each(
    paths.flatMap((path) => [
      { path, colorScheme: "light" as const, width: 1440 },
      { path, colorScheme: "dark" as const, width: 390 },
    ]),
  )(
    "have nothing that axe objects to, $colorScheme at $width px: $path",
    async ({ path, colorScheme, width }) => {
      const context = await app.browser.newContext({ colorScheme, viewport: { width, height: 900 } });
      await context.addCookies([{ name: "learner", value: "ada-brook", url: app.address }]);
      const page = await visit(path, context);
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
      await context.close();
    },
  );

  it("print without what only a screen can do", async () => {
    const context = await app.browser.newContext();
    for (const path of ["/study/learners/ada-brook", "/study/lessons/dents-that-mislead"]) {
      const page = await visit(path, context);
      await page.emulateMedia({ media: "print" });
      expect(await page.getByRole("navigation", { name: "Places" }).isVisible()).toBe(false);
      expect(
        await page.locator("main .unprinted").evaluateAll((all) => all.some((one) => one.checkVisibility())),
      ).toBe(false);
      expect(await page.getByRole("heading", { level: 1 }).isVisible()).toBe(true);
    }
    await context.close();
  });

  it("show the cheaper path's minutes beside the recorded ones on a case", async () => {
    const context = await plain();
    const page = await visit("/casebook/24-004", context);
    const part = page.getByRole("region", { name: "A cheaper path?" });
    expect(await part.getByText("On record").isVisible()).toBe(true);
    expect(await part.locator("svg").count()).toBe(2);
    const minutes = await part.locator("dd b").allTextContents();
    expect(minutes.map((words) => Number.parseInt(words, 10))).toEqual([21, 9]);
    await context.close();
  });
});
