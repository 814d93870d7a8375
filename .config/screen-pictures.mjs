/** Pictures of the screen for the documents: each a few steps a person takes, on a day that is always the same. */
import { execFileSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { chromium } from "playwright-core";
import { preview } from "vite";
import { findChromium } from "./find-chromium.mjs";
import { repository, tool } from "./repository.mjs";

/** In winter plans are made; in July they are walked. */
const WINTER = "2027-02-14T10:00:00Z";
const JULY = "2027-07-06T09:00:00Z";
const WIDE = { width: 1440, height: 900 };
/** Lists that run on below a window of that height. */
const TALL = { width: 1440, height: 2400 };
const VIEWPORTS = { "ways-out": TALL, compare: { width: 1440, height: 1360 } };

const sample = (name) => `${repository}sample-plots/${name}.json`;
const layout = JSON.parse(readFileSync(sample("garden-to-solve"), "utf8")).layouts[0];

/** Pictures by name: the steps before, then what is taken of the page. */
const SCENES = {
  sheet: async (page) => {
    await press(page, "B02-1");
    return shot(page, page);
  },
  "ways-out": async (page) => {
    await page
      .getByRole("button", { name: /^Ways out: B02-1/ })
      .first()
      .click();
    const ways = page.getByRole("region", { name: "Ways out" });
    await ways.getByText(/^Cage B02-1/).waitFor();
    return shot(page, ways);
  },
  "clear-ground": async (page) => {
    await press(page, "B02-1");
    await page.getByRole("button", { name: "Clear ground" }).click();
    await page
      .getByText(/can lie on the dotted ground/)
      .first()
      .waitFor();
    return clipOf(page, ".sheet-holder", { width: 760, height: 460 });
  },
  arrange: async (page) => {
    await arranged(page);
    return shot(page, page.getByRole("dialog"));
  },
  compare: async (page) => {
    await compared(page);
    return shot(page, page.locator("#main"));
  },
  overlaid: async (page) => {
    await compared(page);
    await page.getByRole("button", { name: "Overlaid" }).click();
    await page.getByText(/First thoughts, then/).waitFor();
    await resting(page);
    return shot(page, page.locator(".compare-sheet").first());
  },
  "paper-dialog": async (page) => {
    await page.getByRole("button", { name: "Paper", exact: true }).click();
    const dialog = page.getByRole("dialog");
    await dialog.locator("img").waitFor();
    return shot(page, dialog);
  },
  "earlier-crops": async (page) => {
    await page.getByRole("button", { name: "Plan", exact: true }).click();
    await page.getByRole("button", { name: /^Walled garden/ }).click();
    await command(page, "Earlier crops");
    const dialog = page.getByRole("dialog");
    await dialog.getByRole("row").nth(2).waitFor();
    return shot(page, dialog);
  },
  "editor-picture": async (page) => {
    await command(page, "Picture under the drawing");
    const panel = page.getByRole("region", { name: "Picture under the drawing" });
    await panel.locator("input[type=file]").setInputFiles({
      name: "kitchen-garden.jpg",
      mimeType: "image/jpeg",
      buffer: await airPhoto(page),
    });
    await panel.getByRole("button", { name: "Mark a length" }).click();
    await markBed(page, "B05");
    await panel.getByLabel("Length between the marks").fill("9.4 m");
    return shot(page, page);
  },
};

/** Makes those that are wanted; `keep` is handed each as a file. */
export async function screenPictures(folder, isWanted, keep) {
  const names = [...Object.keys(SCENES), "walk"].filter(isWanted);
  if (names.length === 0) return;
  const outDir = join(folder, "site");
  execFileSync(tool("vite"), ["build", "--outDir", outDir, "--logLevel", "error"], {
    cwd: repository,
    env: { ...process.env, NODE_ENV: "production" },
    stdio: ["ignore", "ignore", "inherit"],
  });
  const server = await preview({
    configFile: join(repository, "vite.config.ts"),
    logLevel: "warn",
    build: { outDir },
    preview: { host: "127.0.0.1", port: 0 },
  });
  const browser = await chromium.launch({
    executablePath: findChromium() ?? undefined,
    args: ["--no-sandbox", "--disable-gpu"],
  });
  const url = `http://127.0.0.1:${server.httpServer.address().port}/`;
  try {
    for (const name of names) {
      const bytes = name === "walk" ? await walk(browser, url) : await scene(browser, url, name);
      const file = join(folder, `${name}.png`);
      writeFileSync(file, bytes);
      keep(name, file);
    }
  } finally {
    await browser.close();
    await server.close();
  }
}

async function scene(browser, url, name) {
  const page = await opened(browser, url, { viewport: VIEWPORTS[name] ?? WIDE }, WINTER);
  try {
    return await SCENES[name](page);
  } finally {
    await page.context().close();
  }
}

/** The walk on a phone, as docs/record.md shows it. */
async function walk(browser, url) {
  const phone = {
    viewport: { width: 390, height: 780 },
    deviceScaleFactor: 1.5,
    hasTouch: true,
    isMobile: true,
  };
  const page = await opened(browser, url, phone, JULY);
  try {
    await page.getByRole("button", { name: "Walk", exact: true }).tap();
    const region = page.getByRole("region", { name: "Walk", exact: true });
    await region.locator(".walk-code").waitFor();
    for (const step of ["More", "All plots"]) {
      await region.getByRole("button", { name: step, exact: true }).tap();
    }
    await region.locator(".walk-near").filter({ hasText: "A01-1" }).tap();
    await region.locator(".walk-code").filter({ hasText: "A01-1" }).waitFor();
    await resting(page);
    return await shot(page, page);
  } finally {
    await page.context().close();
  }
}

/** A page with the sample garden drawn and checked, nothing moving. */
async function opened(browser, url, options, today) {
  const context = await browser.newContext({
    ...options,
    locale: "en-GB",
    timezoneId: "Europe/London",
    reducedMotion: "reduce",
    serviceWorkers: "block",
  });
  const page = await context.newPage();
  page.setDefaultTimeout(60_000);
  await page.addInitScript(() => {
    for (const name of ["showOpenFilePicker", "showSaveFilePicker"])
      Reflect.deleteProperty(window, name);
  });
  await page.clock.setFixedTime(today);
  await page.goto(url);
  await page.locator(".sheet[data-view]").waitFor();
  await page.locator(".finding").first().waitFor({ state: "attached" });
  await resting(page);
  return page;
}

/** Waits until the view of the sheet has stood still. */
async function resting(page) {
  let before = null;
  for (let turn = 0; turn < 40; turn += 1) {
    await page.waitForTimeout(250);
    const now = await page.evaluate(
      () => document.querySelector(".sheet[data-view]")?.getAttribute("data-view") ?? "none",
    );
    if (now === before) return;
    before = now;
  }
}

async function placeOnPage(page, { x, y }) {
  const view = JSON.parse(await page.locator(".sheet[data-view]").getAttribute("data-view"));
  const box = await page.locator(".sheet[data-view]").boundingBox();
  return { x: box.x + view.x + x * view.scale, y: box.y + view.y - y * view.scale };
}

/** Selects a planting of the sample on the sheet. */
async function press(page, code) {
  const { outline } = layout.plantings.find((planting) => planting.code === code);
  const at = await placeOnPage(page, outline);
  await page.mouse.click(at.x, at.y);
  await page.mouse.move(at.x + 200, at.y + 220);
  await page.getByRole("heading", { name: new RegExp(`^Planting ${code}`) }).waitFor();
  await page.waitForTimeout(800);
}

/** Marks a bed of the sample from end to end, as somebody drags who knows its length. */
async function markBed(page, code) {
  const { outline } = layout.beds.find((bed) => bed.code === code);
  const turn = (outline.turnDeg * Math.PI) / 180;
  const half = outline.lengthM / 2;
  const end = (sign) => ({
    x: outline.x + sign * half * Math.sin(turn),
    y: outline.y + sign * half * Math.cos(turn),
  });
  const [from, to] = [await placeOnPage(page, end(-1)), await placeOnPage(page, end(1))];
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 8 });
  await page.mouse.up();
}

async function command(page, name) {
  await page.keyboard.press("Control+k");
  const dialog = page.getByRole("dialog");
  await dialog.getByRole("combobox").fill(name);
  await dialog.getByRole("option").first().waitFor();
  await page.keyboard.press("Enter");
}

async function arranged(page) {
  await page.getByRole("button", { name: "Layout", exact: true }).click();
  await page.getByRole("button", { name: /^Arrange .* for me/ }).click();
  await page.getByLabel(/^Also place what the seed list still wants/).check();
  await page.getByRole("button", { name: "Arrange", exact: true }).click();
  await page.getByText("3 conflicts before, no conflict after").waitFor();
}

async function compared(page) {
  await arranged(page);
  await page.getByRole("button", { name: "Add as a new layout" }).click();
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  await page.getByText(/differs from First thoughts/).waitFor();
  await resting(page);
}

/** Takes a picture of the page or of a part, without the line that says for some seconds what was done. */
async function shot(page, part, options) {
  await page.evaluate(() => {
    for (const line of document.querySelectorAll(".status-line")) line.style.visibility = "hidden";
  });
  return part.screenshot(options);
}

/** A piece of the page from the upper left corner of something. */
async function clipOf(page, selector, { width, height }) {
  const box = await page.locator(selector).first().boundingBox();
  return shot(page, page, {
    clip: {
      x: box.x,
      y: box.y,
      width: Math.min(width, box.width),
      height: Math.min(height, box.height),
    },
  });
}

/** An air photo nobody took: grass, the sample's beds as bare earth, the path. */
async function airPhoto(page) {
  const base64 = await page.evaluate(() => {
    const canvas = Object.assign(document.createElement("canvas"), { width: 1600, height: 1200 });
    const pen = canvas.getContext("2d");
    let seed = 7;
    const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    pen.fillStyle = "#8fa678";
    pen.fillRect(0, 0, 1600, 1200);
    for (let tuft = 0; tuft < 26000; tuft += 1) {
      pen.fillStyle = `hsl(${85 + random() * 25} ${18 + random() * 18}% ${42 + random() * 20}%)`;
      pen.fillRect(random() * 1600, random() * 1200, 4 + random() * 9, 4 + random() * 9);
    }
    pen.translate(800, 600);
    pen.rotate((-8 * Math.PI) / 180);
    pen.fillStyle = "#a58a6d";
    for (let row = 0; row < 5; row += 1)
      for (const side of [-1, 1]) pen.fillRect(side < 0 ? -470 : 20, -300 + row * 120, 420, 56);
    pen.fillStyle = "#c9bda6";
    pen.fillRect(-560, 330, 1120, 50);
    return canvas.toDataURL("image/jpeg", 0.85).split(",")[1];
  });
  return Buffer.from(base64, "base64");
}
