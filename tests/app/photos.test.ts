import { existsSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import type { BrowserContextOptions, Page } from "playwright-core";
import sharp from "sharp";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { handmadePng, sideways } from "@/tests/fixtures/pictures";
import { type RunningApp, startApp } from "./server";

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
});

async function openPage(options: BrowserContextOptions = {}): Promise<Page> {
  const page = await (await app.browser.newContext(options)).newPage();
  page.setDefaultTimeout(20_000);
  return page;
}
async function keepAsSheet(page: Page): Promise<string> {
  await page.goto(`${app.address}/?instrument=euphonium&says=${encodeURIComponent("2nd valve sticks")}`);
  await page.getByRole("button", { name: "Keep as a bench sheet" }).click();
  await page.waitForURL(/\/sheets\/[0-9]/);
  return /sheets\/([0-9-]+)/.exec(page.url())?.[1] ?? "";
}
async function send(
  page: Page,
  pictures: readonly Readonly<{ name: string; buffer: Buffer }>[],
  caption = "",
) {
  await page.getByText("Add photos of the state on arrival").click();
  await page
    .getByLabel("Photos, JPEG, PNG, WebP or AVIF")
    .setInputFiles(pictures.map((picture) => ({ mimeType: "image/jpeg", ...picture })));
  await page.getByLabel("What they show, if you like").fill(caption);
  await page.getByRole("button", { name: "Keep the photos" }).click();
}
const told = (page: Page, words: string) => page.getByRole("status").filter({ hasText: words }).waitFor();
const standing = (id: string) => readFileSync(join(app.content, "cases", `${id}.md`), "utf8");
const folderOf = (id: string) => join(app.content, "photos", id);
const isDrawn = (page: Page) =>
  page
    .locator("main img")
    .evaluateAll((all) =>
      all.every((one) => one instanceof HTMLImageElement && one.complete && one.naturalWidth > 0),
    );
async function objections(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
}
const other = () =>
  sharp({ create: { width: 900, height: 600, channels: 3, background: "#8d6816" } })
    .webp()
    .toBuffer();

const devices: readonly (readonly [string, BrowserContextOptions])[] = [
  ["a desk, 1440 px", { viewport: { width: 1440, height: 900 } }],
  ["a phone, 390 px and touch", { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true }],
  ["a desk without JavaScript", { javaScriptEnabled: false }],
];

describe.each(devices)("photos of the state on arrival at %s", { timeout: 120_000 }, (_, options) => {
  it("are sent, stand upright without EXIF, are described, taken off, put back and printed", async () => {
    const page = await openPage(options);
    const hasScript = options.javaScriptEnabled !== false;
    const id = await keepAsSheet(page);
    await send(
      page,
      [
        { name: "../../../cases/24-001.md", buffer: await sideways() },
        { name: "bell.webp", buffer: await other() },
      ],
      "The bow as it came in",
    );
    await told(page, "The photos are kept");
    await page.waitForFunction(() => document.querySelectorAll("main img").length === 2);
    await page.locator("main img").first().scrollIntoViewIfNeeded();
    await expect.poll(() => isDrawn(page), { timeout: 10_000 }).toBe(true);
    const files = readdirSync(folderOf(id));
    expect(files).toHaveLength(4);
    for (const name of files) {
      expect(name).toMatch(/^[0-9a-f]{32}(\.thumb)?\.jpg$/);
      const bytes = readFileSync(join(folderOf(id), name));
      const { exif, orientation } = await sharp(bytes).metadata();
      expect([exif, orientation]).toEqual([undefined, undefined]);
    }
    const [first = ""] = [...standing(id).matchAll(/file: ([0-9a-f]{32}\.jpg)/g)].map(
      ([, file]) => file ?? "",
    );
    const upright = await sharp(join(folderOf(id), first)).metadata();
    expect([upright.width, upright.height]).toEqual([40, 60]);
    if (hasScript) {
      expect(await objections(page)).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
      ).toBeLessThanOrEqual(0);
    }

    await page.getByText("Reword").nth(1).click();
    await page.getByLabel("What photo 2 shows").fill("A crease in the bell");
    await page.getByRole("button", { name: "Keep these words" }).click();
    await told(page, "What it shows is kept");
    await page.getByAltText("A crease in the bell").waitFor();

    const before = standing(id);
    await page.getByRole("button", { name: "Take off photo 1" }).click();
    await told(page, "The photo is off the sheet");
    expect(standing(id)).not.toContain(first);
    const gone = await page.request.get(`${app.address}/photos/${id}/${first}`);
    expect(gone.status()).toBe(404);
    await page.getByRole("button", { name: "Undo" }).click();
    await told(page, "The photo is back");
    expect(standing(id)).toBe(before);

    await page.goto(`${app.address}/sheets/${id}/job-sheet`);
    expect(await page.locator("main figcaption").allTextContents()).toEqual([
      "1. The bow as it came in",
      "2. A crease in the bell",
    ]);
    await expect.poll(() => isDrawn(page), { timeout: 10_000 }).toBe(true);
    if (hasScript) expect(await objections(page)).toEqual([]);
    await page.goto(`${app.address}/casebook/${id}`);
    expect(await page.getByAltText("The bow as it came in").count()).toBe(1);
    if (hasScript) expect(await objections(page)).toEqual([]);
    await page.context().close();
  });

  it("are refused in words that name the file, and then none is kept", async () => {
    const page = await openPage(options);
    const id = await keepAsSheet(page);
    const before = standing(id);
    await send(page, [
      { name: "sound.jpg", buffer: await sideways() },
      { name: "drawing.jpg", buffer: Buffer.from('<svg xmlns="http://www.w3.org/2000/svg"/>') },
      { name: "bomb.png", buffer: handmadePng(20_000, 20_000) },
      { name: "half.jpg", buffer: (await sideways()).subarray(0, 700) },
    ]);
    const alert = page.getByRole("alert").filter({ hasText: "Not saved" });
    await alert.waitFor();
    const words = (await alert.textContent()) ?? "";
    expect(words).toContain("'drawing.jpg', which by its content is");
    expect(words).toContain("'bomb.png', which is 20000 by 20000 pixels");
    expect(words).toContain("'half.jpg', which is damaged or cut off");
    expect(words).not.toContain("sound.jpg");
    expect(existsSync(folderOf(id))).toBe(false);
    expect(standing(id)).toBe(before);
    await page.context().close();
  });
});

describe("the photos' route", () => {
  it("gives what a case names, as what it is, and nothing else", async () => {
    const page = await openPage();
    const id = await keepAsSheet(page);
    await send(page, [{ name: "a.jpg", buffer: await sideways() }]);
    await told(page, "The photos are kept");
    const [, file = ""] = /file: ([0-9a-f]{32}\.jpg)/.exec(standing(id)) ?? [];
    const answer = await fetch(`${app.address}/photos/${id}/${file}`);
    expect(answer.headers.get("content-type")).toBe("image/jpeg");
    expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
    expect(Buffer.from(await answer.arrayBuffer())).toEqual(readFileSync(join(folderOf(id), file)));
    for (const path of [
      `/photos/${id}/..%2f..%2fcases%2f${id}.md`,
      `/photos/..%2fcases/${id}.md`,
      `/photos/${id}/${"0".repeat(32)}.jpg`,
      `/photos/24-031/${file}`,
      `/photos/__proto__/${file}`,
    ])
      expect((await fetch(app.address + path)).status, path).toBe(404);
    rmSync(join(folderOf(id), file));
    expect((await fetch(`${app.address}/photos/${id}/${file}`)).status).toBe(404);
    await page.context().close();
  });

  it("no page from elsewhere can send a photo, and what weighs too much is refused in words", async () => {
    const post = (headers: Record<string, string>) =>
      fetch(`${app.address}/sheets/24-031`, { method: "POST", headers, body: "x" });
    const foreign = await post({ Origin: "http://elsewhere.test", "Content-Type": "multipart/form-data" });
    expect(foreign.status).toBe(403);
    expect(await foreign.text()).toContain("Nothing was changed");
    const heavy = await fetch(`${app.address}/sheets/24-031`, {
      method: "POST",
      headers: { Origin: app.address },
      body: new Uint8Array(61 * 2 ** 20),
    });
    expect(heavy.status).toBe(413);
    expect(await heavy.text()).toContain("fewer photos");
  });
});
