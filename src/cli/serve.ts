/**
 * `wideberth serve`: the program for the browsers of this computer and of the home network. Says
 * where it is, and what plain http in a home network cannot do.
 */
import { existsSync } from "node:fs";
import type { Server } from "node:http";
import { type NetworkInterfaceInfo, networkInterfaces } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import startCode from "qrcode-generator";
import { parseOptions, usage } from "./options.ts";
import { Refusal } from "./refusal.ts";
import { siteServer } from "./static-site.ts";

/** The built site lies beside the command line, in the package as after `npm run build`. */
const SITE = join(dirname(fileURLToPath(import.meta.url)), "..", "site");
const USUAL_PORT = 8080;
/** Ports tried, one after another, where none is asked for. */
const PORTS_TRIED = 20;

export async function serve(args: readonly string[]): Promise<number> {
  const { values, positionals } = parseOptions("serve", args, {
    port: { type: "string" },
    "only-here": { type: "boolean", default: false },
  });
  if (positionals.length > 0) throw usage("serve", `Got "${positionals[0]}", expected options`);
  const port = values.port === undefined ? null : portOf(values.port);
  if (!existsSync(join(SITE, "index.html"))) {
    throw new Refusal([
      `wideberth serve: got no site at ${SITE}, expected the one "npm run build" makes.`,
    ]);
  }
  const isOnlyHere = values["only-here"];
  const server = siteServer(SITE);
  const found = await listen(server, port, isOnlyHere ? "127.0.0.1" : undefined);
  const network = isOnlyHere ? [] : homeAddresses(networkInterfaces(), found);
  process.stdout.write(servingWords(found, network, { isOnlyHere, hasScreen: isScreen() }));
  await untilAskedToStop();
  // What a browser still holds open is not waited for.
  server.closeAllConnections();
  await new Promise((resolve) => {
    server.close(resolve);
  });
  process.stdout.write("Stopped.\n");
  return 0;
}

function portOf(text: string): number {
  const port = Number(text);
  if (/^\d+$/.test(text) && port >= 1 && port <= 65_535) return port;
  throw usage("serve", `Got --port ${text}, expected a number from 1 to 65535`);
}

/** Listens on the port asked for, else on the first free one from the usual on; gives the port. */
async function listen(
  server: Server,
  wanted: number | null,
  host: string | undefined,
): Promise<number> {
  const ports =
    wanted === null ? Array.from({ length: PORTS_TRIED }, (_, at) => USUAL_PORT + at) : [wanted];
  let refused = "";
  for (const port of ports) {
    const code = await tryPort(server, port, host);
    if (code === null) return port;
    refused = code;
    if (code !== "EADDRINUSE") break;
  }
  const named = ports.length > 1 ? `ports ${ports[0]} to ${ports.at(-1)}` : `port ${ports[0]}`;
  const why =
    refused === "EADDRINUSE"
      ? "in use by another program"
      : refused === "EACCES"
        ? "kept for the system"
        : `refused (${refused})`;
  throw usage("serve", `${named}: ${why}; choose another with --port`);
}

/** Null when it listens, else the code of what is in the way. */
function tryPort(server: Server, port: number, host: string | undefined): Promise<string | null> {
  return new Promise((resolve) => {
    const failed = (error: NodeJS.ErrnoException) => {
      server.off("listening", listening);
      resolve(error.code ?? error.message);
    };
    const listening = () => {
      server.off("error", failed);
      resolve(null);
    };
    server.once("error", failed);
    server.once("listening", listening);
    server.listen({ port, ...(host === undefined ? {} : { host }) });
  });
}

/** Addresses other devices of the network reach this computer by: IPv4, which people can type. */
export function homeAddresses(
  interfaces: Readonly<Record<string, readonly NetworkInterfaceInfo[] | undefined>>,
  port: number,
): readonly string[] {
  return Object.values(interfaces)
    .flatMap((infos) => infos ?? [])
    .filter(({ family, internal, address }) => {
      // Without a router a device gives itself 169.254.x.y, which leads nowhere.
      return family === "IPv4" && !internal && !address.startsWith("169.254.");
    })
    .map(({ address }) => `http://${address}:${port}/`);
}

function isScreen(): boolean {
  return process.stdout.isTTY;
}

/** Ctrl+C, or the system's wish. A second one ends at once, as ever. */
function untilAskedToStop(): Promise<void> {
  return new Promise((resolve) => {
    for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
      process.once(signal, () => resolve());
    }
  });
}

export interface ServingChoice {
  readonly isOnlyHere: boolean;
  /** Somebody looks at the output: a square code can be held before a phone. */
  readonly hasScreen: boolean;
}

/** Browsers keep these for https and for the computer itself, whatever page asks. */
const PLAIN_HTTP = `Over these addresses (plain http) a phone's browser allows no page
    the camera: type the code on a stake or packet instead of scanning it;
    the position: place what you see by hand;
    working without a network: the phone must reach this computer to open the page,
    so open it before you go out of reach, and do not close it there.
A plan is kept in the phone's browser under this very address: if this computer gets
another one, the plan is not shown there. Save plans to files.
On this computer (localhost) all of it works; for phones, see docs/hosting.md on https.
`;

const STOP = "Leave this window open. Ctrl+C stops it.\n";

export function servingWords(
  port: number,
  network: readonly string[],
  { isOnlyHere, hasScreen }: ServingChoice,
): string {
  const here = `  on this computer      http://localhost:${port}/\n`;
  if (isOnlyHere) return `Wideberth is at\n${here}\n${STOP}`;
  const [first] = network;
  if (first === undefined) {
    return `Wideberth is at\n${here}No network found that other devices could reach it by.\n\n${STOP}`;
  }
  const lines = network.map((address) => `  in your network       ${address}\n`).join("");
  const code = hasScreen ? `${squareCode(first)}\n` : "";
  return `Wideberth is at\n${here}${lines}\n${code}${PLAIN_HTTP}\n${STOP}`;
}

/** A square code in half blocks, with the quiet zone readers need. */
export function squareCode(text: string): string {
  const code = startCode(0, "M");
  code.addData(text);
  code.make();
  return code.createASCII(1, 2);
}
