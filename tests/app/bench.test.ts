import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningApp, startApp } from "./server";

const says = "3rd valve hangs two thirds down coming up, oiled it same, no dents, other two free";
const bench = `/?says=${encodeURIComponent(says)}&instrument=euphonium`;
const pages = [
  "/",
  bench,
  "/casebook?q=hangs",
  "/casebook/24-004",
  "/handbook",
  "/handbook/causes/casing-pushed",
  "/handbook/checks/valve-travel",
  "/handbook/repairs/round-casing",
  "/handbook/cautions/torch",
  "/add",
];

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
});

describe("the built app", () => {
  it.each(pages)("has nothing that axe objects to at %s", async (path) => {
    const page = await (await app.browser.newContext()).newPage();
    await page.goto(app.address + path);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
    await page.context().close();
  });

  it("answers as one types, keeps it in the address, and leads on to a like case and its lesson", async () => {
    const page = await (await app.browser.newContext()).newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(app.address);
    await page.locator("textarea[name=says]").fill(says);
    await page.waitForURL(/says=3rd/);
    await page.getByText("Hangs", { exact: false }).first().waitFor();
    await page.locator("main a[href^='/casebook/']").first().click();
    await page.waitForURL(/\/casebook\/[0-9]/);
    expect(await page.getByText("The path").count()).toBeGreaterThan(0);
    await page.context().close();
  });

  it("lets one correct a finding with a tap, and keeps the correction in the address", async () => {
    const page = await (await app.browser.newContext()).newPage();
    page.setDefaultTimeout(20_000);
    await page.goto(app.address + bench);
    const hangs = page.locator("details[name=finding]", { hasText: "Hangs" }).first();
    await hangs.locator("summary").click();
    await hangs.getByRole("link", { name: "Slow on the return" }).click();
    await page.waitForURL(/e=valve-travel(:|%3A)slow/);
    await page.locator("details[name=finding]", { hasText: "Slow on the return" }).first().waitFor();
    await page.context().close();
  });

  it("takes in a new case that is found at once by search and by likeness, and shows its lesson", async () => {
    const page = await (await app.browser.newContext()).newPage();
    page.setDefaultTimeout(20_000);
    const lesson = "Ask what the wombat had for breakfast before the valve comes out.";
    const own = readFileSync(join(app.content, "cases", "24-004.md"), "utf8")
      .replace("id: 24-004", "id: 26-910")
      .replace(/^demo: .*\n/m, "")
      .replace(/^title: .*$/m, "title: Wombat beside the second valve")
      .replace(/^lessons: .*$/m, `lessons: ["${lesson}"]`);
    await page.goto(`${app.address}/add`);
    await page.getByRole("button", { name: "Markdown" }).click();
    const text = page.locator("textarea[name=text]");
    await text.fill(own.replace("status: closed", "status: shut"));
    await page.getByRole("button", { name: "Save" }).click();
    await page.getByText("one of: open, closed").first().waitFor();
    expect(await text.inputValue()).toContain("status: shut");
    await text.fill(own);
    await page.getByRole("button", { name: "Save" }).click();
    await page.waitForURL(/\/casebook\/26-910/);
    expect(await page.getByText(lesson).count()).toBeGreaterThan(0);
    await page.goto(`${app.address}/casebook?q=wombat`);
    expect(await page.locator("main a[href='/casebook/26-910']").count()).toBeGreaterThan(0);
    const like = "2nd valve hangs halfway both ways, slide stiff, frees with the slide out";
    await page.goto(`${app.address}/?instrument=trumpet&says=${encodeURIComponent(like)}`);
    expect(await page.locator("main a[href='/casebook/26-910']").count()).toBeGreaterThan(0);
    await page.context().close();
  });

  it("takes an instrument in the address that it does not know for none", async () => {
    const answer = await fetch(`${app.address}/?says=3rd+valve+hangs&instrument=euph`);
    expect(answer.status).toBe(200);
  });

  it("reads, searches and answers without JavaScript", async () => {
    const page = await (await app.browser.newContext({ javaScriptEnabled: false })).newPage();
    await page.goto(app.address + bench);
    expect(await page.getByText("Likely", { exact: true }).count()).toBeGreaterThan(0);
    await page.goto(`${app.address}/casebook?q=hangs`);
    expect(await page.locator("main a[href^='/casebook/']").count()).toBeGreaterThan(0);
    await page.context().close();
  });

  it("finds a case that was put into the folder from outside", async () => {
    const text = readFileSync(join(app.content, "cases", "24-004.md"), "utf8");
    const own = text
      .replace("id: 24-004", "id: 26-900")
      .replace(/^title: .*$/m, "title: Quokka in the tuning slide");
    writeFileSync(join(app.content, "cases", "26-900.md"), own);
    expect(readdirSync(join(app.content, "cases"))).toContain("26-900.md");
    await expect
      .poll(async () => (await fetch(`${app.address}/casebook?q=quokka`)).text(), { timeout: 15_000 })
      .toContain("26-900");
  });

  it("keeps good cases when a broken one is put beside them, and says what is wrong", async () => {
    writeFileSync(join(app.content, "cases", "26-901.md"), "---\nid: 26-901\n\ttitle: x\n---\n");
    await expect
      .poll(async () => (await fetch(`${app.address}/casebook`)).text(), { timeout: 15_000 })
      .toContain("26-901.md");
    expect(await (await fetch(`${app.address}/casebook?q=hangs`)).text()).toContain("24-004");
  });

  it("refuses a foreign origin on a write and sends a policy without inline scripts", async () => {
    const write = await fetch(`${app.address}/add`, {
      method: "POST",
      headers: { origin: "http://elsewhere.test" },
    });
    expect(write.status).toBe(403);
    const policy = (await fetch(app.address)).headers.get("content-security-policy") ?? "";
    expect(policy).toContain("'strict-dynamic'");
    expect(policy).not.toContain("unsafe-inline");
  });
});
