/**
 * Python with Shapely 2, through which the benchmarks ask GEOS. Looked for in .build/geos, then on
 * the PATH; when neither has it, it is installed into .build/geos if Python's package index can be
 * reached. Debian 12's own python3-shapely is 1.8, whose tree has no distance query.
 */
import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import { repository } from "./repository.mjs";

const folder = `${repository}.build/geos`;
const wanted = ["shapely>=2,<3", "numpy"];

/** Absolute path or name of a Python that has Shapely 2; null when there is none to be had. */
export function findShapely() {
  return [`${folder}/bin/python`, "python3"].find(hasShapely) ?? installShapely();
}

function hasShapely(python) {
  const { status } = spawnSync(python, [
    "-c",
    "import shapely, sys; sys.exit(0 if int(shapely.__version__.split('.')[0]) >= 2 else 1)",
  ]);
  return status === 0;
}

function installShapely() {
  console.log("Shapely 2 is not here; trying to install it into .build/geos ...");
  const quiet = { stdio: "ignore", timeout: 120_000 };
  const isMade =
    spawnSync("python3", ["-m", "venv", folder], quiet).status === 0 &&
    spawnSync(`${folder}/bin/pip`, ["install", "--quiet", ...wanted], quiet).status === 0;
  if (isMade && hasShapely(`${folder}/bin/python`)) return `${folder}/bin/python`;
  rmSync(folder, { recursive: true, force: true });
  console.log(
    "Shapely 2 cannot be had here; GEOS will be reported as absent. By hand: python3 -m venv .build/geos && .build/geos/bin/pip install 'shapely>=2'",
  );
  return null;
}
