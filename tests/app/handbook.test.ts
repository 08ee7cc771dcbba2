import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningApp, startApp } from "./server";

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
});

async function open(path: string, javaScriptEnabled = true) {
  const page = await (await app.browser.newContext({ javaScriptEnabled })).newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(app.address + path);
  return page;
}

describe("the handbook's contents", () => {
  it("leave only what is called so, as one types, and keep the words in the address", async () => {
    const page = await open("/handbook");
    const other = page.locator("main a[href='/handbook/causes/casing-dented']");
    await other.waitFor();
    await page.getByRole("searchbox", { name: "Handbook" }).fill("stuck sl");
    await page.waitForURL(/q=stuck\+sl/);
    await other.waitFor({ state: "detached" });
    expect(await page.locator("main a[href='/handbook/repairs/free-slide']").count()).toBe(1);
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
    await page.context().close();
  });

  it("are narrowed by family and words together, by other names too, without JavaScript", async () => {
    const page = await open("/handbook?family=piston-brass&q=oval", false);
    expect(await page.locator("main a[href='/handbook/causes/casing-out-of-round']").count()).toBe(1);
    expect(await page.locator("main a[href='/handbook/causes/casing-dented']").count()).toBe(0);
    await page.getByRole("link", { name: "Every family" }).click();
    await page.waitForURL(/\/handbook\?q=oval$/);
    await page.getByRole("searchbox").fill("gum");
    await page.getByRole("searchbox").press("Enter");
    await page.waitForURL(/q=gum/);
    expect(await page.locator("main a[href='/handbook/causes/gummed-oil']").count()).toBe(1);
    await page.context().close();
  });

  it("say so where nothing is called that, and where else to look", async () => {
    const page = await open("/handbook?q=numbat");
    await page.getByText("Nothing in the handbook is called that.").waitFor();
    expect(await page.getByRole("link", { name: "Look in the casebook" }).getAttribute("href")).toBe(
      "/casebook?q=numbat",
    );
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.context().close();
  });
});
