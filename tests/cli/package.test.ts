/** The package `npm pack` makes, installed into an empty folder where no registry can be reached. */
import { type ChildProcess, execFileSync, spawn, spawnSync } from "node:child_process";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync } from "node:fs";
import { once } from "node:events";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { version } from "../../src/cli/version.ts";

const repository = fileURLToPath(new URL("../../", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "wideberth-package-"));
const home = join(folder, "empty");
const command = join(home, "node_modules/.bin/wideberth");
/** Nobody listens there: whatever is asked of a registry fails. */
const NO_REGISTRY = "http://127.0.0.1:9/";

interface Packed {
  readonly filename: string;
  readonly files: readonly { readonly path: string }[];
}

let packed: Packed;

beforeAll(() => {
  const told = execFileSync("npm", ["pack", "--json", "--pack-destination", folder], {
    cwd: repository,
    encoding: "utf8",
    stdio: ["ignore", "pipe", "ignore"],
  });
  [packed] = JSON.parse(told) as [Packed];
  mkdirSync(home);
  execFileSync(
    "npm",
    [
      "install",
      "--no-audit",
      "--no-fund",
      "--registry",
      NO_REGISTRY,
      join(folder, packed.filename),
    ],
    { cwd: home, env: { ...process.env, npm_config_cache: join(folder, "cache") }, stdio: "pipe" },
  );
}, 180_000);

afterAll(() => rmSync(folder, { recursive: true, force: true }));

const run = (...args: readonly string[]) =>
  spawnSync(command, args, { cwd: home, encoding: "utf8" });

describe("the package", () => {
  test("holds the program, its pages, samples and licences, and nothing to find faults by", () => {
    const paths = packed.files.map(({ path }) => path);
    for (const part of [
      ".build/cli/wideberth.mjs",
      ".build/site/index.html",
      ".build/site/service-worker.js",
      ".build/site/licences.txt",
      "docs/hosting.md",
      "sample-plots/garden-to-solve.json",
      "LICENSE",
    ]) {
      expect(paths).toContain(part);
    }
    expect(paths.filter((path) => /\.map$|^src\/|^tests\/|\.tsx?$/.test(path))).toEqual([]);
  });

  test("brings everything with it: nothing else is installed", () => {
    const installed = readdirSync(join(home, "node_modules")).filter(
      (name) => !name.startsWith("."),
    );
    expect(installed).toEqual(["wideberth"]);
  });

  test("names the licence of each library that is built in", () => {
    const text = readFileSync(
      join(home, "node_modules/wideberth/.build/site/licences.txt"),
      "utf8",
    );
    for (const name of [
      "react",
      "konva",
      "zod",
      "pdfkit",
      "highs",
      "@expo-google-fonts/noto-sans",
    ]) {
      expect(text).toMatch(new RegExp(`^${name} \\d+\\.\\d+\\.\\d+, `, "m"));
    }
    expect(text).toContain("SIL OPEN FONT LICENSE");
  });
});

describe("its command, in a folder with nothing else", () => {
  test("tells its version and what it can do", () => {
    expect(run("--version").stdout.trim()).toBe(version);
    const help = run("--help").stdout;
    for (const name of [
      "serve",
      "check",
      "compare",
      "lots",
      "map",
      "print",
      "export",
      "merge",
      "years",
    ]) {
      expect(help).toMatch(new RegExp(`^wideberth ${name} `, "m"));
    }
  });

  test("checks a plan and draws its map", () => {
    cpSync(join(repository, "sample-plots/garden-to-solve.json"), join(home, "plan.json"));
    const { status, stdout } = run("check", "plan.json");
    expect(status).toBe(1);
    expect(stdout).toContain("3 conflicts");
    expect(run("map", "plan.json", "-o", "map.pdf").status).toBe(0);
    expect(readFileSync(join(home, "map.pdf")).subarray(0, 5).toString()).toBe("%PDF-");
  });
});

describe("wideberth serve", () => {
  const started: ChildProcess[] = [];
  afterAll(() => started.forEach((child) => child.kill("SIGKILL")));

  /** Starts it on a port nobody has, and waits until it says where it is. */
  async function served(...args: readonly string[]) {
    const child = spawn(command, ["serve", ...args], { cwd: home });
    started.push(child);
    let told = "";
    child.stdout.setEncoding("utf8");
    child.stdout.on("data", (text: string) => (told += text));
    await expect.poll(() => told, { timeout: 20_000 }).toContain("Ctrl+C stops it");
    const port = Number(/localhost:(\d+)/.exec(told)?.[1]);
    return { child, port, told: () => told };
  }

  test("gives the page and all it names, and stops cleanly", async () => {
    const { child, port, told } = await served();
    const url = `http://127.0.0.1:${port}/`;
    const page = await fetch(url);
    expect(page.status).toBe(200);
    expect(page.headers.get("content-type")).toBe("text/html; charset=utf-8");
    expect(page.headers.get("content-security-policy")).toBe("frame-ancestors 'none'");
    const named = [...(await page.text()).matchAll(/(?:src|href)="(\.\/[^"]+)"/g)];
    expect(named.length).toBeGreaterThan(5);
    for (const [, path = ""] of named) {
      const answer = await fetch(new URL(path, url));
      expect([path, answer.status]).toEqual([path, 200]);
      expect(answer.headers.get("x-content-type-options")).toBe("nosniff");
    }
    child.kill("SIGINT");
    expect(await once(child, "exit")).toEqual([0, null]);
    expect(told()).toMatch(/Stopped\.\n$/);
    await expect(fetch(url)).rejects.toThrow();
  });

  test("gives nothing but the site's own files", async () => {
    const { child, port } = await served("--only-here");
    const url = `http://127.0.0.1:${port}/`;
    for (const path of [
      "%2e%2e/cli/wideberth.mjs",
      "..%2f..%2fpackage.json",
      "assets",
      "%",
      "no",
    ]) {
      expect([path, (await fetch(url + path)).status]).toEqual([path, 404]);
    }
    expect((await fetch(url, { method: "POST", body: "x" })).status).toBe(405);
    const tag = (await fetch(url)).headers.get("etag") ?? "";
    expect((await fetch(url, { headers: { "If-None-Match": tag } })).status).toBe(304);
    child.kill("SIGTERM");
    await once(child, "exit");
  });

  test("takes another port where the usual one is taken, and says so where none is left", async () => {
    const first = await served("--only-here");
    const second = await served("--only-here");
    expect(second.port).not.toBe(first.port);
    const { status, stderr } = run("serve", "--port", String(first.port));
    expect(status).toBe(2);
    expect(stderr).toContain(`port ${first.port}: in use by another program`);
    for (const wrong of ["0", "70000", "http"]) {
      expect(run("serve", "--port", wrong).stderr).toContain("a number from 1 to 65535");
    }
    for (const { child } of [first, second]) child.kill("SIGINT");
  });
});
