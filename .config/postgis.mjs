/**
 * `npm run postgis`: starts a PostgreSQL with PostGIS of its own on a socket in a temporary folder,
 * runs the tests that load a register with docs/regional-register.sql and compare its pairs with
 * ours, and stops it. Debian's packages are installed when they are missing and that is permitted.
 */
import { spawnSync } from "node:child_process";
import { chmodSync, chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { installPackages } from "./installed-packages.mjs";
import { aptInstall } from "./installed-programs.mjs";
import { repository, tool } from "./repository.mjs";

const DEBIAN = "/usr/lib/postgresql";
const PACKAGES = ["postgresql", "postgresql-postgis"];

/** In the C locale, which is everywhere: the one of the shell may not be made on a bare machine. */
const CLUSTER = ["-U", "wideberth", "-A", "trust", "-E", "UTF8", "--locale=C", "--no-sync"];

if (!installPackages()) process.exit(1);
const programs = findServer() ?? (aptInstall(PACKAGES), findServer());
if (programs) {
  process.exitCode = withServer(programs, runTests);
} else {
  console.error(
    `There is no PostgreSQL with PostGIS here: apt-get install ${PACKAGES.join(" ")} (as root)`,
  );
  process.exitCode = 1;
}

/** Folder of the programs of the newest server that has PostGIS; null when there is none. */
function findServer() {
  const versions = existsSync(DEBIAN)
    ? readdirSync(DEBIAN).sort((a, b) => Number(b) - Number(a))
    : [];
  const version = versions.find(
    (name) =>
      existsSync(`${DEBIAN}/${name}/bin/initdb`) &&
      existsSync(`/usr/share/postgresql/${name}/extension/postgis.control`),
  );
  return version === undefined ? null : `${DEBIAN}/${version}/bin`;
}

function withServer(bin, work) {
  const folder = mkdtempSync(join(tmpdir(), "wideberth-postgis-"));
  const user = serverUser();
  if (user.uid !== undefined) chownSync(folder, user.uid, user.gid);
  chmodSync(folder, 0o700);
  const data = join(folder, "data");
  const run = (program, ...args) => {
    // pg_ctl leaves the server running: it must not hold on to our output.
    const { status } = spawnSync(join(bin, program), args, {
      ...user,
      cwd: folder,
      stdio: "ignore",
    });
    return status === 0;
  };
  const options = `-k ${folder} -c listen_addresses='' -c fsync=off -c jit=off`;
  let isStarted = false;
  try {
    isStarted =
      run("initdb", "-D", data, ...CLUSTER) &&
      run("pg_ctl", "-D", data, "-l", join(folder, "log"), "-w", "-o", options, "start");
    if (isStarted) return work(bin, folder);
    console.error(`The server in ${bin} could not be started.`);
    return 1;
  } finally {
    if (isStarted) run("pg_ctl", "-D", data, "-m", "immediate", "-w", "stop");
    rmSync(folder, { recursive: true, force: true });
  }
}

/** PostgreSQL refuses to run as root: then it runs as the user of Debian's package. */
function serverUser() {
  if (process.getuid?.() !== 0) return {};
  const id = (flag) => Number(spawnSync("id", [flag, "postgres"], { encoding: "utf8" }).stdout);
  return { uid: id("-u"), gid: id("-g") };
}

function runTests(bin, folder) {
  const { status } = spawnSync(tool("vitest"), ["run", "--project=postgis"], {
    cwd: repository,
    stdio: "inherit",
    env: {
      ...process.env,
      WIDEBERTH_PSQL: join(bin, "psql"),
      PGHOST: folder,
      PGUSER: "wideberth",
      PGDATABASE: "postgres",
    },
  });
  return status ?? 1;
}
