import { existsSync } from "node:fs";
import { fileURLToPath } from "node:url";
import react from "@vitejs/plugin-react";
import type { UserConfig } from "vite";
import { defineConfig } from "vitest/config";
import { SITE_BUDGETS, chunkBudget } from "./.config/chunk-budget.ts";
import { compiledOnTheWay } from "./.config/compiled-on-the-way.ts";
import { fetchedAtOnce } from "./.config/fetched-at-once.ts";
import { firstLoad, inOnePiece } from "./.config/first-load.ts";
import { licences } from "./.config/licences.ts";
import { WORKER_FILE, offlineSite } from "./.config/offline-site.ts";
import { oneByte } from "./.config/one-byte.ts";
import { plansRead } from "./.config/plans-read.ts";
import { unpackHere } from "./.config/unpack-here.ts";

/** Absolute path of something in the repository: `root` is src/app, so nothing may stay relative. */
const inRepository = (path: string) => fileURLToPath(new URL(path, import.meta.url));

const publicDir = inRepository("src/app/public");

const storageParts = inOnePiece("storage", inRepository("src/store/keeping/last-plan.ts"));
const storageFirst: typeof storageParts = (moduleId, context) =>
  moduleId.includes("vite/preload-helper") ? "storage" : storageParts(moduleId, context);

const site: UserConfig = {
  // Relative addresses: the built site works from any folder of any static host.
  base: "./",
  publicDir: existsSync(publicDir) ? publicDir : false,
  build: {
    outDir: inRepository(".build/site"),
    emptyOutDir: true,
    sourcemap: "hidden",
    // What a late part leans on is fetched when that part names it: the lists of all their files
    // would be 4 KiB of the first load. Their style sheets must be there before they are shown.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_file, needed, { hostType }) =>
        hostType === "html" ? needed : needed.filter((path) => path.endsWith(".css")),
    },
    // The PDF writer is one large chunk, loaded when a map is made; a test holds the first load.
    chunkSizeWarningLimit: 700,
    // The plot map's font is a file of its own, fetched only when a map is made.
    assetsInlineLimit: (file) => (file.endsWith(".ttf") ? false : undefined),
    rolldownOptions: {
      // Words stand in files of their own: each goes where it is said, and nothing is named twice.
      optimization: { inlineConst: { mode: "all", pass: 2 } },
      input: {
        index: inRepository("src/app/index.html"),
        "service-worker": inRepository("src/app/service-worker.ts"),
      },
      output: {
        entryFileNames: ({ name }) =>
          name === "service-worker" ? WORKER_FILE : "assets/[name]-[hash:7].js",
        // The first load names over a hundred late files: five or seven letters tell versions apart
        // and weigh less.
        chunkFileNames: "assets/[name]-[hash:7].js",
        assetFileNames: "assets/[name]-[hash:5][extname]",
        codeSplitting: {
          groups: [
            // What opens the storage while the rest is received, and what asks for the rest.
            { name: storageFirst, priority: 4 },
            // Received and compiled beside the rest, on another thread, and seldom other than before.
            {
              name: "libraries",
              test: /node_modules\/(react|react-dom|scheduler|konva)\//,
              priority: 3,
            },
            // All that the page cannot run without: in many small files the same code weighs more
            // and comes later.
            { name: firstLoad("base", inRepository("src/app/main.tsx")), priority: 2 },
            // What plans are read by, in one piece.
            { name: "schemas", test: /node_modules\/zod\/|src\/core\/model\//, priority: 1 },
            // Wanted right after the first picture: one file is asked for, not eight in a row.
            {
              name: inOnePiece("strip", inRepository("src/panel/bloom/BloomChart.tsx")),
              priority: 0,
            },
          ],
        },
      },
    },
  },
};

/**
 * One file that runs on Node alone, in any folder. Every dependency is bundled (pdfkit too, given
 * `font: null` so that it never looks for its own font files), and the plot map's font is carried
 * inside: import the TTF with `?inline`, which gives a base64 data URL. Lazily imported modules
 * stay lazy: they are in the file but run when first asked for.
 */
const commandLine: UserConfig = {
  publicDir: false,
  ssr: { noExternal: true },
  build: {
    ssr: true,
    outDir: inRepository(".build/cli"),
    emptyOutDir: true,
    target: "node20",
    rolldownOptions: {
      input: inRepository("src/cli/main.ts"),
      plugins: [oneByte()],
      output: {
        entryFileNames: "wideberth.mjs",
        codeSplitting: false,
        // Installed as a package it is a command.
        banner: "#!/usr/bin/env node",
      },
    },
  },
};

export default defineConfig(({ isSsrBuild }) => ({
  root: inRepository("src/app"),
  plugins: [
    react(),
    unpackHere(),
    plansRead(),
    fetchedAtOnce({
      parts: ["src/app/main.tsx", "src/app/first-sample.ts"].map(inRepository),
      faces: [
        "source-sans-3-latin-wght-normal",
        "source-code-pro-latin-wght-normal",
        "source-serif-4-latin-600-normal",
        "source-serif-4-latin-400-italic",
      ],
    }),
    compiledOnTheWay(["libraries", "base"]),
    chunkBudget(SITE_BUDGETS),
    offlineSite(),
    licences(),
  ],
  // Sample plans outside the root are imported with `?raw`.
  server: { fs: { allow: [inRepository(".")] } },
  worker: { format: "es", plugins: () => [licences(), unpackHere()] },
  ...(isSsrBuild ? commandLine : site),
  test: {
    root: inRepository("."),
    projects: [
      {
        extends: true,
        test: {
          name: "unit",
          include: ["tests/**/*.test.ts"],
          exclude: [
            "tests/browser/**",
            "tests/architecture/**",
            "tests/soak/**",
            "tests/postgis/**",
          ],
          globalSetup: inRepository(".config/program-folder.ts"),
          // Property tests take their time on a busy machine.
          testTimeout: 30_000,
        },
      },
      {
        extends: true,
        test: { name: "architecture", include: ["tests/architecture/*.test.ts"] },
      },
      {
        // Node tests that drive an installed Chromium over the built site, served for them.
        extends: true,
        test: {
          name: "browser",
          include: ["tests/browser/**/*.test.ts"],
          globalSetup: inRepository(".config/serve-built-site.ts"),
          testTimeout: 120_000,
          hookTimeout: 120_000,
          // A busy machine takes its time; what is waited for comes or does not.
          expect: { poll: { timeout: 15_000 } },
          // A machine under load may once answer too late; the report names what was tried again.
          retry: 1,
          fileParallelism: false,
        },
      },
      {
        // Browser tests of some minutes. `npm run soak`.
        extends: true,
        test: {
          name: "soak",
          include: ["tests/soak/**/*.test.ts"],
          globalSetup: inRepository(".config/serve-built-site.ts"),
          hookTimeout: 60_000,
          expect: { poll: { timeout: 15_000 } },
          fileParallelism: false,
        },
      },
      {
        // Against a PostgreSQL with PostGIS that .config/postgis.mjs starts. `npm run postgis`.
        extends: true,
        test: {
          name: "postgis",
          include: ["tests/postgis/**/*.test.ts"],
          testTimeout: 120_000,
          fileParallelism: false,
        },
      },
      {
        // Budgets: tests that time one thing against another in one run. `npm run bench`.
        extends: true,
        test: {
          name: "bench",
          include: ["tests/bench/**/*.bench.ts"],
          globalSetup: inRepository(".config/serve-built-site.ts"),
          hookTimeout: 60_000,
          testTimeout: 300_000,
          fileParallelism: false,
        },
      },
    ],
  },
}));
