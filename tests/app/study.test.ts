import { readFileSync } from "node:fs";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningApp, startApp } from "./server";

/** A baritone that came in with its second valve stopping: valve, swaps and plugs were tried, its bottom cap was not. */
const job = "/study?family=piston-brass&seed=7&case=23-085";
const asked = `${job}&ask=valve-travel&ask=oil-response&ask=swap-test`;
const answered = `${asked}&cause=casing-dented&sure=70&cause=&sure=&cause=&sure=&repair=raise-casing-dent&first=look-solder&answer=yes`;
const title = "The dent came up and a joint let go";

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
});

async function open(path: string, javaScriptEnabled = true): Promise<Page> {
  const page = await (await app.browser.newContext({ javaScriptEnabled })).newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(app.address + path);
  return page;
}

const wordsOfMain = async (page: Page) => (await page.locator("main").textContent()) ?? "";

/** More presses than any page of Study has places to stop at. */
const mostStops = 160;

/** Goes from stop to stop by the Tab key until one of that name has the focus. */
async function tabTo(page: Page, name: RegExp): Promise<void> {
  for (let stop = 0; stop < mostStops; stop++) {
    await page.keyboard.press("Tab");
    const words = await page.evaluate(() => {
      const at = document.activeElement;
      const label = at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels?.[0] : at;
      return (label?.textContent ?? "").replace(/\s+/g, " ").trim();
    });
    if (name.test(words)) return;
  }
  throw new Error(
    `a stop named ${name} must be reached by Tab; ${mostStops} presses did not; look at the page`,
  );
}

describe("Study", () => {
  it.each(
    ["/study", job, asked, `${job}&answer=yes`, answered].flatMap((path) => [
      { path, colorScheme: "light" as const },
      { path, colorScheme: "dark" as const },
    ]),
  )("has nothing that axe objects to, $colorScheme, at $path", async ({ path, colorScheme }) => {
    const page = await (await app.browser.newContext({ colorScheme })).newPage();
    await page.goto(app.address + path);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
    await page.context().close();
  });

  it("is gone through from the family to the lesson by keyboard alone", async () => {
    const page = await open("/");
    await tabTo(page, /^Study$/);
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: "Take the next job" }).waitFor();
    await tabTo(page, /^Clarinet\d+ jobs$/);
    await page.keyboard.press("Enter");
    await page.waitForURL(/case=/);
    const id = new URL(page.url()).searchParams.get("case") ?? "";
    const file = readFileSync(join(app.content, "cases", `${id}.md`), "utf8");
    const ownTitle = /^title: (.*)$/m.exec(file)?.[1]?.replace(/^["']|["']$/g, "") ?? "no title";
    expect(await page.content()).not.toContain(ownTitle);

    await tabTo(page, /^Find a check$/);
    await page.keyboard.type("look pads");
    await tabTo(page, /Look at the pads/);
    await page.keyboard.press("Enter");
    await page.waitForURL(/ask=look-pads&from=[a-z-]+#last$/);
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("last");
    await tabTo(page, /^Find a check$/);
    await page.keyboard.type("play it");
    await tabTo(page, /Play it/);
    await page.keyboard.press("Enter");
    await page.waitForURL(/ask=look-pads&ask=[a-z-]+&from=[a-z-]+#last$/);
    expect(await wordsOfMain(page)).toMatch(/2 checks, \d+ min/);

    await tabTo(page, /^Likeliest cause/);
    await page.keyboard.press("ArrowDown");
    expect(await page.locator("select[name=cause]").first().inputValue()).not.toBe("");
    await tabTo(page, /how sure of: likeliest cause/);
    await page.keyboard.type("130");
    await page.keyboard.press("Enter");
    await page.getByRole("alert").filter({ hasText: "at most 100; got '130'" }).waitFor();
    await tabTo(page, /how sure of: likeliest cause/);
    await page.keyboard.press("Control+a");
    await page.keyboard.type("60");
    await page.keyboard.press("Enter");
    await page.getByRole("heading", { name: /^It was: / }).waitFor();
    expect(await wordsOfMain(page)).toContain(ownTitle);
    await tabTo(page, /^Next case$/);
    await page.keyboard.press("Enter");
    await page.waitForURL((url) => !["", null, id].includes(url.searchParams.get("case")));
    expect(await wordsOfMain(page)).toContain("Only what came over the counter");
    await page.context().close();
  });

  it("is gone through by touch on a phone", async () => {
    const context = await app.browser.newContext({ hasTouch: true, viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(`${app.address}/study`);
    await page.getByRole("link", { name: "Choose for me" }).tap();
    await page.waitForURL(/case=/);
    await page.locator("#ask summary").first().tap();
    await page.locator("#ask a[href*='ask=']").first().tap();
    await page.waitForURL(/ask=/);
    await page.getByRole("link", { name: "To your answer" }).tap();
    await page.getByLabel("Likeliest cause", { exact: true }).selectOption({ index: 1 });
    await page.getByLabel("how sure of: likeliest cause").fill("40");
    await page.getByRole("button", { name: "That is my answer" }).tap();
    await page.getByRole("heading", { name: /^It was: / }).waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    await context.close();
  });

  it("tells of a job only what came in until it is asked", async () => {
    const page = await open(job);
    const words = await wordsOfMain(page);
    expect(words).toContain("Second valve stops a third of the way down");
    expect(words).toContain("On arrival");
    const all = await page.content();
    expect(all).not.toContain(title);
    expect(all).not.toContain("Old lacquer hides");
    expect(words).not.toContain("Hangs");
    await page.context().close();
  });

  it("answers without JavaScript: found, not done but typical, and what swaps come to; and keeps it in the address", async () => {
    const page = await open(job, false);
    for (const name of ["Valve travel", "What fresh oil does", "Swap pistons between casings"]) {
      await page.getByLabel("Find a check").fill(name);
      await page.getByRole("button", { name: "Find" }).click();
      await page.getByRole("link", { name }).click();
    }
    const words = await wordsOfMain(page);
    expect(words).toContain("Hangs, and comes with help, a third of the way down, both ways");
    expect(words).toContain("Not done on this job");
    expect(words).toContain("Typical, not found:");
    expect(words).toContain("Which comes to: Stays with the casing");
    expect(words).toContain("3 checks, 11 min");
    await page.reload();
    expect(await wordsOfMain(page)).toBe(words);
    await page.context().close();
  });

  it("lets nothing be done before the way is open", async () => {
    const page = await open(`${job}&ask=bore-gauge`);
    expect(await wordsOfMain(page)).toContain("First: Take off the bottom cap");
    await page.getByLabel("Find a check").fill("bore bottom");
    expect(await page.getByRole("link", { name: /Measure the bore/ }).count()).toBe(0);
    await page.getByLabel("Find a check").fill("bottom cap");
    expect(await wordsOfMain(page)).toContain("Only what came over the counter");
    await page.getByRole("link", { name: /Take off the bottom cap/ }).click();
    await page.getByLabel("Find a check").fill("measure bore");
    await page.getByRole("link", { name: /Measure the bore/ }).waitFor();
    await page.context().close();
  });

  it("keeps what was filled in when it cannot be taken, and says why", async () => {
    const page = await open(
      `${asked}&cause=casing-dented&sure=80&cause=piston-bent&sure=30&answer=yes`,
      false,
    );
    expect(await page.getByRole("alert").textContent()).toContain(
      "All together must be at most 100; got 110",
    );
    expect(await page.locator("select[name=cause]").nth(1).inputValue()).toBe("piston-bent");
    expect(await page.locator("input[name=sure]").first().inputValue()).toBe("80");
    await page.context().close();
  });

  it("tells afterwards what it was, the score, the ways side by side and belief in a picture and a table", async () => {
    const page = await open(answered, false);
    const words = await wordsOfMain(page);
    expect(words).toContain("It was: Casing dented");
    expect(words).toContain(title);
    // 70 on the right cause leaves 0.3 squared, and next to nothing on each of many others.
    expect(words).toContain("Score 0.09");
    expect(words).toContain("Look at the solder. So says the handbook.");
    expect(words).toContain("Not done on this job");
    expect(await page.locator("figure svg line[data-place='0']").count()).toBe(3);
    const belief = page.getByRole("region", { name: "Check by check" });
    expect(await belief.getByRole("row").count()).toBe(1 + 1 + 3);
    const oil = page.getByRole("row", { name: /^What fresh oil does/ }).first();
    expect(await oil.getByRole("cell").allTextContents()).toEqual(["2", "–without it", "–without it"]);
    await page.getByRole("link", { name: "Read the story" }).click();
    await page.waitForURL(/\/casebook\/23-085$/);
    await page.context().close();
  });

  it("finds a check as one types, and says when none is like that", async () => {
    const page = await open(job);
    expect(await page.getByRole("link", { name: /Measure the bore|Look at the solder/ }).count()).toBe(0);
    await page.getByLabel("Find a check").pressSequentially("sold");
    await page.getByRole("link", { name: /Look at the solder/ }).waitFor();
    expect(
      await page.locator("#ask details").evaluateAll((all) => all.map((one) => one.hasAttribute("open"))),
    ).not.toContain(false);
    await page.getByLabel("Find a check").fill("zither");
    await page.getByText("No check has these words").waitFor();
    await page.getByLabel("Find a check").fill("");
    expect(await page.getByRole("link", { name: /Look at the solder/ }).count()).toBe(0);
    await page.context().close();
  });

  it("takes along what was filled in so far when the next check is asked for", async () => {
    const page = await open(job);
    await page.getByLabel("Likeliest cause", { exact: true }).selectOption("casing-dented");
    await page.getByLabel("how sure of: likeliest cause").fill("35");
    await page.getByLabel("And check first").selectOption("look-solder");
    for (const name of ["Valve travel", "Look at the solder"]) {
      await page.getByLabel("Find a check").fill(name);
      await page.getByRole("link", { name }).click();
      await page.getByRole("heading", { name, level: 3 }).waitFor();
    }
    expect(await page.getByLabel("Likeliest cause", { exact: true }).inputValue()).toBe("casing-dented");
    expect(await page.getByLabel("how sure of: likeliest cause").inputValue()).toBe("35");
    expect(await page.getByLabel("And check first").inputValue()).toBe("look-solder");
    expect(await wordsOfMain(page)).toContain("2 checks");
    await page.context().close();
  });

  it("keeps the group open from which a check was asked, so that the next is at hand", async () => {
    const page = await open(`${asked}&from=valve`, false);
    const unfolded = page.locator("#ask details[open] > summary");
    expect(await unfolded.allTextContents()).toEqual([expect.stringMatching(/^Valve\d/)]);
    await page.context().close();
  });

  it("folds a long list on a phone: no part of the list is more than a screen away", async () => {
    const context = await app.browser.newContext({ viewport: { width: 390, height: 844 } });
    const page = await context.newPage();
    await page.goto(app.address + job);
    const height = await page.locator("#ask").evaluate((node) => node.getBoundingClientRect().height);
    expect(height).toBeLessThan(844);
    const targets = await page
      .locator("#ask summary, #ask a:visible")
      .evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
    expect(Math.min(...targets)).toBeGreaterThanOrEqual(44);
    await context.close();
  });

  it.each([390, 820, 1440])("has its places in even rows at %i px, none of them cut off", async (width) => {
    const context = await app.browser.newContext({ viewport: { width, height: 844 } });
    const page = await context.newPage();
    await page.goto(`${app.address}/study`);
    const places = await page
      .getByRole("navigation", { name: "Places" })
      .getByRole("link")
      .evaluateAll((all) =>
        all.map((one) => ({
          top: one.getBoundingClientRect().top,
          right: one.getBoundingClientRect().right,
        })),
      );
    expect(new Set(places.map(({ top }) => top)).size).toBe(width === 390 ? 2 : 1);
    expect(Math.max(...places.map(({ right }) => right))).toBeLessThanOrEqual(width);
    await context.close();
  });

  it("says so where the address names no job that can be studied", async () => {
    const page = await open("/study?case=99-999");
    expect(await wordsOfMain(page)).toContain("There is no such job to work through");
    await page.context().close();
  });
});
