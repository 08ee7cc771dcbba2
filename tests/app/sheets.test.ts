import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningApp, startApp } from "./server";

const says = "3rd valve hangs two thirds down coming up, oiled it same, no dents, other two free";
const bench = `/?instrument=euphonium&says=${encodeURIComponent(says)}`;
const devices: readonly (readonly [string, BrowserContextOptions])[] = [
  ["a desk, 1440 px", { viewport: { width: 1440, height: 900 } }],
  ["a phone, 390 px and touch", { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
];

let app: RunningApp;
/** An app for the tests around it alone: what one job leaves in the casebook must not steer the next. */
function ownApp(): void {
  beforeAll(async () => {
    app = await startApp();
  });
  afterAll(async () => {
    await app.stop();
  });
}

const fileOf = (id: string) => join(app.content, "cases", `${id}.md`);
const standing = (id: string) => readFileSync(fileOf(id), "utf8");

async function openPage(options: BrowserContextOptions = {}): Promise<Page> {
  const page = await (await app.browser.newContext(options)).newPage();
  page.setDefaultTimeout(20_000);
  return page;
}

/** Keeps the bench as a sheet and gives the id that it was kept under. */
async function keepAsSheet(page: Page): Promise<string> {
  await page.goto(app.address + bench);
  await page.getByRole("button", { name: "Keep as a bench sheet" }).click();
  await page.waitForURL(/\/sheets\/[0-9]/);
  return /sheets\/([0-9-]+)/.exec(page.url())?.[1] ?? "";
}

/** Waits until the path has so many steps on the page, by which time they are on disk. */
const untilSteps = async (page: Page, id: string, count: number) => {
  await page.getByText(`${count} steps,`, { exact: false }).first().waitFor();
  expect(standing(id).match(/^ {2}- \{ (check: |repair: .*result: )/gm)).toHaveLength(count);
};

async function objections(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
}

describe.each(devices)("a whole job at %s", { timeout: 120_000 }, (_, options) => {
  ownApp();

  it("is kept as a sheet, logged, harmed, proven, closed and found again", async () => {
    const page = await openPage(options);
    const id = await keepAsSheet(page);
    await untilSteps(page, id, 6);
    expect(await objections(page)).toEqual([]);

    await page.goto(`${app.address}/sheets`);
    expect(await page.locator(`main a[href='/sheets/${id}']`).count()).toBe(1);
    expect(await objections(page)).toEqual([]);
    await page.locator(`main a[href='/sheets/${id}']`).click();
    await page.waitForURL(new RegExp(`/sheets/${id}`));

    const next = page.locator("details[name=log]").first();
    await next.locator("summary").first().click();
    await next.getByLabel("Minutes").fill("4");
    await next.locator("fieldset").getByRole("button").nth(1).click();
    await untilSteps(page, id, 7);
    expect(standing(id)).toMatch(/minutes: 4 \}/);

    await page.goto(`${app.address}/sheets/${id}?what=check+guide-look`);
    const guide = page.locator("form", { has: page.locator("input[value='check guide-look']") }).first();
    await guide.locator("fieldset").getByRole("button").nth(1).click();
    await untilSteps(page, id, 8);

    await page.goto(`${app.address}/sheets/${id}?what=repair+round-casing`);
    const repair = page.locator("form", { has: page.locator("input[value='repair round-casing']") }).first();
    await repair.getByText("It did harm").click();
    await repair.getByRole("button", { name: "Log the harm" }).click();
    await repair.getByText("what the repair did to the instrument").waitFor();
    await repair.getByLabel("What happened to the instrument").fill("the plug marked the wall");
    await repair.getByLabel("Minutes to make good").fill("25");
    await repair.getByRole("button", { name: "Log the harm" }).click();
    await untilSteps(page, id, 9);
    expect(standing(id)).toContain("what: the plug marked the wall, step: 9, minutes: 25, paidBy: shop");

    await page.goto(`${app.address}/sheets/${id}?what=repair+round-casing`);
    await repair.getByRole("button", { name: "Fixed it" }).click();
    await untilSteps(page, id, 10);
    expect(await objections(page)).toEqual([]);

    await page.getByRole("link", { name: "Close the job" }).click();
    await page.waitForURL(/\/close$/);
    expect(await objections(page)).toEqual([]);
    const lesson = `Ask the numbat first, in job ${id}.`;
    await page.getByLabel("What would you tell an apprentice?").fill(lesson);
    await page.getByRole("button", { name: "Close it into the casebook" }).click();
    await page.getByText("no proof yet of").waitFor();
    expect(standing(id)).toContain("status: open");
    for (const proof of await page.locator("input[name=proof]:enabled").all()) await proof.check();
    await page.getByRole("button", { name: "Close it into the casebook" }).click();
    await page.waitForURL(new RegExp(`/casebook/${id}`));
    expect(await page.getByText(lesson).count()).toBeGreaterThan(0);
    expect(standing(id)).toMatch(/status: closed[\s\S]*role: root[\s\S]*outcome: fixed/);

    await page.goto(`${app.address}/casebook?q=numbat`);
    expect(await page.locator(`main a[href='/casebook/${id}']`).count()).toBeGreaterThan(0);
    await page.goto(app.address + bench);
    expect(await page.locator(`main a[href='/casebook/${id}']`).count()).toBeGreaterThan(0);
    await page.goto(`${app.address}/sheets`);
    expect(await page.locator(`main a[href='/sheets/${id}']`).count()).toBe(0);
    await page.context().close();
  });
});

describe("a sheet", () => {
  ownApp();

  it("takes its last step back, and any earlier version again", async () => {
    const page = await openPage();
    const id = await keepAsSheet(page);
    const kept = standing(id);
    await page.getByLabel("Or say what you found, as at the bench").fill("spring good");
    await page.getByRole("button", { name: "Log it" }).click();
    await untilSteps(page, id, 7);
    await page.getByRole("button", { name: "Undo" }).click();
    await untilSteps(page, id, 6);
    await page.goto(`${app.address}/sheets/${id}?version=2#versions`);
    expect(await objections(page)).toEqual([]);
    await page.getByRole("button", { name: "Put back version 2" }).click();
    await untilSteps(page, id, 7);
    await page.getByText("Look at them, put one back").click();
    await page.getByRole("button", { name: "Put back version 1" }).click();
    await untilSteps(page, id, 6);
    expect(standing(id)).toBe(kept);
    await page.context().close();
  });

  it.each([true, false])(
    "that an editor changed meanwhile shows both versions and loses neither (JavaScript: %s)",
    async (javaScriptEnabled) => {
      const page = await openPage({ javaScriptEnabled });
      const id = await keepAsSheet(page);
      await page.goto(`${app.address}/sheets/${id}?what=check+spring-look`);
      writeFileSync(fileOf(id), standing(id).replace("status: open", "status: open\nmaker: Bandicoot"));
      const form = page.locator("form", { has: page.locator("input[value='check spring-look']") }).first();
      await form.getByLabel("Note").fill("written in mid-edit");
      await form.locator("fieldset").getByRole("button").first().click();
      await page.getByText("This sheet was changed elsewhere meanwhile").waitFor();
      expect(standing(id)).not.toContain("written in mid-edit");
      const note = page.locator("form", { has: page.locator("input[value='check spring-look']") }).first();
      expect(await note.getByLabel("Note").inputValue()).toBe("written in mid-edit");
      // axe itself needs JavaScript.
      if (javaScriptEnabled) expect(await objections(page)).toEqual([]);
      await page.getByRole("button", { name: "Do mine again on top of it" }).click();
      await page.getByText("7 steps,", { exact: false }).first().waitFor();
      expect(standing(id)).toContain("maker: Bandicoot");
      expect(standing(id)).toContain("written in mid-edit");
      await page.context().close();
    },
  );

  it("brings back what was typed and not sent after a reload", async () => {
    const page = await openPage();
    const id = await keepAsSheet(page);
    await page.getByLabel("Or say what you found, as at the bench").fill("half a sentence");
    await page.goto(`${app.address}/sheets`);
    await page.goto(`${app.address}/sheets/${id}`);
    await expect
      .poll(() => page.getByLabel("Or say what you found, as at the bench").inputValue())
      .toBe("half a sentence");
    await page.context().close();
  });

  it("whose file was broken outside says what is wrong, and can be put back", async () => {
    const page = await openPage();
    const id = await keepAsSheet(page);
    await page.getByLabel("Or say what you found, as at the bench").fill("spring good");
    await page.getByRole("button", { name: "Log it" }).click();
    await untilSteps(page, id, 7);
    const good = standing(id);
    writeFileSync(fileOf(id), good.replace("status: open", "status: ajar"));
    await page.goto(`${app.address}/sheets/${id}`);
    await page.getByText("cannot be read as it stands").waitFor();
    await page.getByText("Look at them, put one back").click();
    await page.getByRole("button", { name: "Put back version 2" }).click();
    await untilSteps(page, id, 7);
    expect(standing(id)).toBe(good);
    await page.context().close();
  });

  it("is kept and logged without JavaScript", async () => {
    const page = await openPage({ javaScriptEnabled: false });
    const id = await keepAsSheet(page);
    await page.goto(`${app.address}/sheets/${id}?what=check+spring-look`);
    const form = page.locator("form", { has: page.locator("input[value='check spring-look']") }).first();
    await form.locator("fieldset").getByRole("button").first().click();
    await untilSteps(page, id, 7);
    await page.context().close();
  });

  it("opens what was refused, and nothing else, without JavaScript", async () => {
    const page = await openPage({ javaScriptEnabled: false });
    const id = await keepAsSheet(page);
    const openFolds = () =>
      page
        .locator("details[open]:has(form) > summary, form details[open] > summary")
        .evaluateAll((all) => all.map((one) => one.textContent));
    expect(await openFolds()).toEqual([]);
    await page.getByText("Put this right, note the state on arrival").click();
    await page.getByLabel("Complaint, in the customer's words").fill("");
    await page.getByRole("button", { name: "Keep it so" }).click();
    await page.getByRole("alert").filter({ hasText: "complaint" }).waitFor();
    expect(await openFolds()).toEqual(["Put this right, note the state on arrival"]);
    expect(await page.getByLabel("Complaint, in the customer's words").inputValue()).toBe("");

    await page.goto(`${app.address}/sheets/${id}?what=repair+round-casing`);
    await page.getByText("It did harm").first().click();
    await page.getByLabel("How it came to that").first().fill("the mandrel jumped");
    await page.getByRole("button", { name: "Log the harm" }).first().click();
    await page.getByRole("alert").filter({ hasText: "what the repair did to the instrument" }).waitFor();
    expect(await page.getByLabel("How it came to that").first().isVisible()).toBe(true);
    expect(await page.getByLabel("How it came to that").first().inputValue()).toBe("the mandrel jumped");
    await page.context().close();
  });

  it("says without JavaScript, too, what the handbook has against the cause that was chosen", async () => {
    const page = await openPage({ javaScriptEnabled: false });
    const id = await keepAsSheet(page);
    await page.goto(`${app.address}/sheets/${id}/close`);
    const against = page.getByText("The handbook speaks against: dry, or oiled with the wrong stuff");
    expect(await against.count()).toBe(0);
    await page.getByLabel("Cause 1", { exact: true }).selectOption("dry-or-wrong-oil");
    await page.getByLabel("Outcome").selectOption("fixed");
    await page.getByRole("button", { name: "Close it into the casebook" }).click();
    await page.getByRole("alert").filter({ hasText: "no repair in the path" }).waitFor();
    expect(await against.count()).toBe(1);
    await page.getByLabel("why", { exact: false }).fill("The player oiled it again at home.");
    await page.getByRole("button", { name: "Close it into the casebook" }).click();
    await page.waitForURL(new RegExp(`/casebook/${id}`));
    await page.getByRole("region", { name: "Against the handbook" }).waitFor();
    await page.context().close();
  });

  it("tells of a harm that an earlier repair of another kind did", async () => {
    const page = await openPage();
    const id = await keepAsSheet(page);
    const form = (repair: string) =>
      page.locator("form", { has: page.locator(`input[value='repair ${repair}']`) }).first();
    await page.goto(`${app.address}/sheets/${id}?what=repair+round-casing`);
    await form("round-casing").getByRole("button", { name: "Made it better" }).click();
    await untilSteps(page, id, 7);
    await page.goto(`${app.address}/sheets/${id}?what=repair+clean-and-oil`);
    await form("clean-and-oil").getByText("It did harm").click();
    await form("clean-and-oil").getByLabel("What happened to the instrument").fill("a ridge in the bore");
    await form("clean-and-oil").getByLabel("By which step").selectOption("7");
    await form("clean-and-oil").getByRole("button", { name: "Log the harm" }).click();
    await page.getByText("The harm is kept with the step that did it").waitFor();
    await untilSteps(page, id, 7);
    expect(standing(id)).toMatch(/harms:\n.*repair: round-casing.*what: a ridge in the bore, step: 7/);
    await page.context().close();
  });

  it("is not written by a foreign page, nor found under what is no id", async () => {
    for (const path of ["/sheets", "/sheets/24-004", "/sheets/24-004/close", "/shop"]) {
      const headers = { origin: "http://elsewhere.test" };
      expect((await fetch(app.address + path, { method: "POST", headers })).status).toBe(403);
    }
    for (const id of ["..%2F..%2Fetc", "99-999", "24-004.md", ".revisions"]) {
      expect((await fetch(`${app.address}/sheets/${id}`)).status).toBe(404);
    }
  });
});
