import { AxeBuilder } from "@axe-core/playwright";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type RunningApp, startApp } from "./server";

const readings = {
  part: "casing 3",
  sib: "casing 1",
  passes: ".714 .716",
  stops: ".717",
  spasses: ".719",
  sstops: ".720",
  piston: ".7172",
  pm: ".0001",
  "s3-1": "free",
  "s3-3": "sticks",
  d1: "1.3",
  "d1-0": ".7186",
  "d1-30": ".7197",
  "d1-60": ".7196",
  "d1-90": ".7180",
  "d1-120": ".7167",
  "d1-150": ".7170",
};
const full = `/gauges?${new URLSearchParams(readings)}`;
const doubtful = `/gauges?${new URLSearchParams({ passes: "16.88 .719", stops: ".718" })}`;

let app: RunningApp;
beforeAll(async () => {
  app = await startApp();
});
afterAll(async () => {
  await app.stop();
});
const open = async (path: string, options: Parameters<RunningApp["browser"]["newContext"]>[0] = {}) => {
  const page = await (await app.browser.newContext(options)).newPage();
  page.setDefaultTimeout(20_000);
  await page.goto(app.address + path);
  return page;
};

describe("the gauges page", () => {
  it.each(["/gauges", full, doubtful])("has nothing that axe objects to at %s", async (path) => {
    for (const colorScheme of ["light", "dark"] as const) {
      const page = await open(path, { colorScheme });
      const { violations } = await new AxeBuilder({ page }).analyze();
      expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ""}`)).toEqual([]);
      await page.context().close();
    }
  });

  it("draws plugs and bore with words and numbers, and says where to press, without JavaScript", async () => {
    const page = await open(full, { javaScriptEnabled: false });
    const text = (await page.locator("main").textContent()) ?? "";
    expect(text).toContain("Casing 3 is tighter than casing 1 by more than 2.0 thou and less than 4.0 thou.");
    expect(text).toContain(
      "too big for the bore here, for certain: by more than 0.1 thou and at most 1.3 thou",
    );
    expect(text).toContain("Widest at 40 and 220 degrees");
    expect(text).toContain("three-lobed");
    expect(text).toContain("18.186 mm to 18.212 mm");
    expect(await page.getByRole("img", { name: /casing 3: \.7160 in to \.7170 in/ }).count()).toBe(1);
    expect(await page.getByText(/thou of radius/).count()).toBe(1);
    expect(text).toMatch(/Casing\s3: under suspicion\./);
    await page.context().close();
  });

  it("takes a form filled in without JavaScript, the decimal comma included", async () => {
    const page = await open("/gauges?unit=mm", { javaScriptEnabled: false });
    await page.locator("input[name=passes]").fill("16,98 17,00");
    await page.locator("input[name=stops]").fill("17,04");
    await page.locator("input[name=stops]").press("Enter");
    await page.waitForURL(/passes=16%2C98/);
    expect(await page.locator("main").textContent()).toContain("17.000 mm to 17.040 mm");
    await page.context().close();
  });

  it("asks about a number that cannot be, and one tap says what it is", async () => {
    const page = await open(doubtful);
    await page.getByText("Not counted until you say what is meant").waitFor();
    await page.getByText("Two readings cannot both be right").waitFor();
    await page.getByRole("link", { name: "It is 16.88 mm" }).click();
    await page.waitForURL(/passes=16\.88\+mm/);
    expect(await page.locator("input[name=passes]").inputValue()).toBe("16.88 mm; .719");
    expect(await page.getByText("Not counted until you say what is meant").count()).toBe(0);
    await page.context().close();
  });

  it("switches the unit without changing what was measured", async () => {
    const page = await open(full);
    await page.getByRole("button", { name: "mm", exact: true }).click();
    await expect.poll(() => page.locator("input[name=stops]").inputValue()).toBe(".717 in");
    expect(await page.locator("main").textContent()).toContain(
      "by more than 0.051 mm and less than 0.102 mm",
    );
    await page.context().close();
  });

  it("answers as one types and keeps it in the address", async () => {
    const page = await open("/gauges");
    await page.locator("input[name=passes]").fill(".669");
    await page.locator("input[name=stops]").fill(".671");
    await page.waitForURL(/stops=\.671/);
    await page.getByText(".6690 in to .6710 in").first().waitFor();
    await page.locator("select[name=s2-1]").selectOption("free");
    await page.waitForURL(/s2-1=free/);
    await page.context().close();
  });

  it("asks a pair that rubs where, which way and how turned, and takes the answer into account and to the bench", async () => {
    const page = await open("/gauges?s2-2=sticks&s1-2=drags&s2-1=sticks", { javaScriptEnabled: false });
    await page.locator("select[name=s2-2w]").selectOption("top");
    await page.locator("select[name=s1-2w]").selectOption("top");
    await page.locator("select[name=s2-1w]").selectOption("bottom");
    await page.locator("select[name=s2-1t]").selectOption("half");
    await page.getByRole("button", { name: "Read" }).click();
    await page.waitForURL(/s2-1t=half/);
    await page.getByText("Casing 2 binds at the same place with").waitFor();
    const { violations } = await new AxeBuilder({
      page: await open(new URL(page.url()).pathname + new URL(page.url()).search),
    }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.getByRole("link", { name: "Take them to the bench" }).click();
    expect(decodeURIComponent(page.url())).toContain("swap=piston+2|casing+1|sticks|bottom||half");
    await page.context().close();
  });

  it("takes the readings to the bench as evidence", async () => {
    const page = await open(full);
    await page.getByRole("link", { name: "Take them to the bench" }).click();
    await page.waitForURL(/e=plug-gauge(:|%3A)tight-place/);
    await page.locator("details[name=finding]", { hasText: "Tight place" }).first().waitFor();
    await page.context().close();
  });

  it("tells the splay of slide legs and takes it to the bench", async () => {
    const legs = new URLSearchParams({
      legs: "inner leg",
      unit: "mm",
      l1: "0",
      l1w: "80",
      l2: "600",
      l2w: "80,5",
    });
    const page = await open(`/gauges?${legs}`, { javaScriptEnabled: false });
    await page.getByText("The legs spread by 0.500 mm from 0.0 mm to 600.0 mm: 0.250 mm a leg").waitFor();
    await page.getByRole("link", { name: "Take them to the bench" }).click();
    await page.waitForURL(/e=legs-parallel(:|%3A)spread/);
    await page.context().close();
  });

  it("tells a leak by the fall of a pressure or by a flow meter, and asks for units", async () => {
    const fall = { leakv: "1 l", leakp: "40 mbar", leakq: "20 mbar", leakt: "60 s", leakgood: "5 ml/min" };
    const page = await open(`/gauges?${new URLSearchParams(fall)}`);
    // By hand: 1000 ml x 2000 Pa / 101325 Pa a minute, held by 2000 / ln 2 = 2885 Pa.
    await page.getByText("20.5 ml/min at 3 kPa").waitFor();
    await page.getByText("4.1 times as much as the sound one").waitFor();
    await page.getByText("Read at 2.89 kPa: 19.7 ml/min").waitFor();
    const { violations } = await new AxeBuilder({ page }).analyze();
    expect(violations.map(({ id }) => id)).toEqual([]);
    await page.goto(`${app.address}/gauges?${new URLSearchParams({ leakf: "40", leakfp: "30 mbar" })}`);
    await page.getByText("40: write a number with its unit, such as 40 ml/min").waitFor();
    await page.context().close();
  });

  it("fits a phone without scrolling sideways", async () => {
    const page = await open(full, { viewport: { width: 390, height: 844 } });
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
    await page.context().close();
  });
});
