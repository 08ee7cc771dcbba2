import { existsSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { AxeBuilder } from "@axe-core/playwright";
import { strToU8, unzipSync, zipSync } from "fflate";
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningApp, startApp } from "./server";

let app: RunningApp;
let place: string;
beforeAll(async () => {
  app = await startApp();
  place = `${app.address}/casebook/exchange`;
});
afterAll(async () => {
  await app.stop();
});

async function openPage(options: BrowserContextOptions = {}): Promise<Page> {
  const page = await (await app.browser.newContext(options)).newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(place);
  return page;
}

async function objections(page: Page): Promise<string[]> {
  const { violations } = await new AxeBuilder({ page }).analyze();
  return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`);
}

const casesNow = () => readdirSync(join(app.content, "cases")).filter((name) => name.endsWith(".md"));
const caseFile = (id: string) => join(app.content, "cases", `${id}.md`);
const headings = "Job no;Horn;Date in;Date out;Problem;Diagnosis;Result;Time;Price";
const job = (id: string, day = "03.04.2009") =>
  `${id};tpt;${day};23.04.2009;sticks, job ${id};gummed oil;fixed;1:20;1.234,50`;
const tableOf = (...rows: readonly string[]) => ({
  name: "old jobs.csv",
  mimeType: "text/csv",
  buffer: Buffer.from([headings, ...rows].join("\r\n")),
});
const read = async (page: Page, table: ReturnType<typeof tableOf>) => {
  await page.setInputFiles("#file", table);
  await page.getByRole("button", { name: "Read it" }).click();
  await page.getByText("2. Say what the columns are").waitFor();
};
const tryIt = async (page: Page) => {
  await page.getByRole("button", { name: /^Try/ }).click();
  await page.getByText("3. Look at what would come of it").waitFor();
};

describe.each([390, 820, 1440])("old jobs brought in at %i px", { timeout: 120_000 }, (width) => {
  it("are chosen, matched, tried and taken in; a row at fault keeps no other out and is not lost", async () => {
    const page = await openPage({ viewport: { width, height: 900 } });
    expect(await objections(page)).toEqual([]);
    const id = `page-${width}`;
    await read(page, tableOf(job(id), "other;kazoo;;;;;;;"));
    expect(await page.getByLabel("Diagnosis").inputValue()).toBe("cause");
    expect(await objections(page)).toEqual([]);
    await tryIt(page);
    await page.getByText("Horn: found 'kazoo'").waitFor();
    await page.getByText("Dates are read day first: line 2 has 23.04.2009").waitFor();
    expect(await objections(page)).toEqual([]);
    expect(existsSync(caseFile(id))).toBe(false);
    await page.getByRole("button", { name: "Take in 1 job" }).click();
    await page.getByText("1 job is in the casebook").waitFor();
    expect(await objections(page)).toEqual([]);
    expect(readFileSync(caseFile(id), "utf8")).toContain("charge: 1234.5");
    await page.getByText("These rows as a table").click();
    expect(await page.locator("#left-rows").inputValue()).toContain("other,kazoo");
    expect(existsSync(caseFile("other"))).toBe(false);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth);
    expect(wide).toBeLessThanOrEqual(width);
    await page.goto(`${app.address}/casebook?q=${id}`);
    expect(await page.locator(`main a[href='/casebook/${id}']`).count()).toBeGreaterThan(0);
    await page.context().close();
  });
});

describe("old jobs brought in", { timeout: 120_000 }, () => {
  it("need no JavaScript", async () => {
    const page = await openPage({ javaScriptEnabled: false });
    await read(page, tableOf(job("plain-1"), job("plain-2").replace("sticks", "leaks")));
    await page.getByLabel("Price").selectOption("");
    await tryIt(page);
    await page.getByRole("button", { name: "Take in 2 jobs" }).click();
    await page.getByText("2 jobs are in the casebook").waitFor();
    expect(readFileSync(caseFile("plain-1"), "utf8")).not.toContain("charge:");
    expect(existsSync(caseFile("plain-2"))).toBe(true);
    await page.context().close();
  });

  it("are matched anew by hand, and a date that can be two days is asked about", async () => {
    const page = await openPage();
    await read(page, tableOf(job("asked").replace("23.04.2009", "05.04.2009")));
    await tryIt(page);
    await page.getByText("nothing in the file tells").waitFor();
    expect(await page.getByRole("button", { name: /Take in/ }).count()).toBe(0);
    await page.getByLabel("Dates such as").selectOption("dmy");
    await tryIt(page);
    await page.getByRole("button", { name: "Take in 1 job" }).click();
    await page.getByText("1 job is in the casebook").waitFor();
    expect(readFileSync(caseFile("asked"), "utf8")).toContain("received: 2009-04-03");
    await page.context().close();
  });

  it("can be stopped on their way; what is in stays in, and the same table brings in the rest", async () => {
    const page = await openPage();
    const count = 400;
    const rows = Array.from({ length: count }, (_, at) =>
      job("", "03.04.2009").replace("sticks", `sticks, lot ${at}`),
    );
    await read(page, tableOf(...rows));
    await tryIt(page);
    const before = casesNow().length;
    await page.getByRole("button", { name: `Take in ${count} jobs` }).click();
    await page.getByText(/^\d+ of 400 rows are in$/).waitFor();
    await page.getByRole("button", { name: "Stop after these" }).click();
    await page.getByText("Stopped as you asked").waitFor();
    const some = casesNow().length - before;
    expect(some).toBeGreaterThan(0);
    expect(some).toBeLessThan(count);
    await tryIt(page);
    await page.getByRole("button", { name: `Take in ${count - some} jobs` }).click();
    await page.getByText(`${count - some} jobs are in the casebook`).waitFor({ timeout: 60_000 });
    expect(casesNow().length - before).toBe(count);
    await page.context().close();
  });

  it("say what is wrong with a file that is no table", async () => {
    const page = await openPage();
    await page.setInputFiles("#file", {
      name: "a.zip",
      mimeType: "text/csv",
      buffer: Buffer.from([80, 75, 3, 4, 0]),
    });
    await page.getByRole("button", { name: "Read it" }).click();
    await page.getByText("It is a zip, or a spreadsheet file").waitFor();
    await page.context().close();
  });

  it("are refused from another page's origin, and when they are far too long", async () => {
    const send = (headers: Record<string, string>, body: string) =>
      fetch(place, { method: "POST", headers: { "Content-Type": "text/plain", ...headers }, body });
    expect((await send({ Origin: "http://example.org" }, "x")).status).toBe(403);
    const page = await openPage({ javaScriptEnabled: false });
    const hidden = await page.locator("form[enctype] input[name^='$']").all();
    const fields = await Promise.all(
      hidden.map(async (input) => [await input.getAttribute("name"), await input.getAttribute("value")]),
    );
    const post = (text: string) => {
      const form = new FormData();
      for (const [name, value] of fields) form.set(name ?? "", value ?? "");
      form.set("wish", "read");
      form.set("file", new File([text], "a.csv"));
      return fetch(place, { method: "POST", headers: { Origin: app.address }, body: form });
    };
    const sound = await post("Horn\ntpt");
    expect([sound.status, (await sound.text()).includes("2. Say what the columns are")]).toEqual([200, true]);
    expect(await (await post("a".repeat(20_000_000))).text()).toContain("It is longer than");
    expect((await post("a".repeat(65_000_000))).status).toBe(413);
    await page.context().close();
  });
});

describe("a copy brought back", { timeout: 120_000 }, () => {
  const zipOf = (files: Readonly<Record<string, string>>) => ({
    name: "casebook.zip",
    mimeType: "application/zip",
    buffer: Buffer.from(
      zipSync(Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)]))),
    ),
  });
  /** A case of the demo under another id. */
  const copied = (id: string) => {
    const [name = ""] = casesNow();
    const own = name.replace(/\.md$/, "");
    return readFileSync(caseFile(own), "utf8").replace(`id: ${own}`, `id: ${id}`);
  };

  it.each([
    ["with JavaScript at 390 px", true, 390],
    ["with JavaScript at 1440 px", true, 1440],
    ["without JavaScript", false, 820],
  ] as const)("is looked at, then taken in, %s", async (_, javaScriptEnabled, width) => {
    const page = await openPage({ javaScriptEnabled, viewport: { width, height: 900 } });
    const [name = ""] = casesNow();
    const id = `zip-${width}`;
    const standing = readFileSync(join(app.content, "cases", name), "utf8");
    const zip = zipOf({ [`cases/${id}.md`]: copied(id), [`cases/${name}`]: `${standing}\nOne line more.\n` });
    const form = page.locator("form:has(#zip)");
    await form.locator("#zip").setInputFiles(zip);
    await form.getByRole("button", { name: "Look at it" }).click();
    await page.getByText("1 case would be added; nothing is written yet").waitFor();
    await page.getByText("Not the same as what is there, so left out: 1 case").waitFor();
    if (javaScriptEnabled) expect(await objections(page)).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
    expect(existsSync(caseFile(id))).toBe(false);
    if (!javaScriptEnabled) await form.locator("#zip").setInputFiles(zip);
    await form.getByRole("button", { name: "Take in 1 case" }).click();
    await page.getByText("Taken in: 1 case").waitFor();
    expect(readFileSync(caseFile(id), "utf8")).toBe(copied(id));
    expect(readFileSync(join(app.content, "cases", name), "utf8")).toBe(standing);
    await page.goto(`${app.address}/casebook/${id}`);
    expect(await page.locator("h1").count()).toBe(1);
    await page.context().close();
  });

  it("says what is wrong with a file that is no zip", async () => {
    const page = await openPage();
    await page.setInputFiles("#zip", {
      name: "a.zip",
      mimeType: "application/zip",
      buffer: Buffer.from("words"),
    });
    await page.getByRole("button", { name: "Look at it" }).click();
    await page.getByText("Nothing was taken in").waitFor();
    await page.context().close();
  });
});

describe("a copy of the casebook", () => {
  it("is a table, data, or a zip of the very files", async () => {
    const get = async (format: string) => {
      const answer = await fetch(`${place}/${format}`);
      return { answer, bytes: new Uint8Array(await answer.arrayBuffer()) };
    };
    const zip = await get("zip");
    expect(zip.answer.headers.get("content-disposition")).toMatch(
      /^attachment; filename="casebook-\d{4}-\d\d-\d\d\.zip"$/,
    );
    const files = unzipSync(zip.bytes);
    expect(Object.keys(files).sort()).toEqual(
      [
        ...casesNow().map((name) => `cases/${name}`),
        ...readdirSync(join(app.content, "lessons")).map((name) => `lessons/${name}`),
      ].sort(),
    );
    for (const [path, bytes] of Object.entries(files))
      expect(Buffer.compare(bytes, readFileSync(join(app.content, path)))).toBe(0);
    const csv = await get("csv");
    expect(Buffer.from(csv.bytes).toString()).toMatch(/^\uFEFF"Job number"/);
    const json = await get("json");
    expect(JSON.parse(Buffer.from(json.bytes).toString()).cases).toHaveLength(casesNow().length);
    expect((await get("pdf")).answer.status).toBe(404);
  });

  it("leaves out what cannot be read, and the page says so", async () => {
    writeFileSync(caseFile("broken"), "no front matter");
    const page = await openPage();
    await expect
      .poll(
        async () => {
          await page.reload();
          return page.getByText("Not in any copy").count();
        },
        { timeout: 10_000 },
      )
      .toBe(1);
    expect(await page.getByText("Not in any copy").textContent()).toContain("broken.md");
    await page.context().close();
  });
});
