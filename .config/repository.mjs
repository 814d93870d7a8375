import { fileURLToPath } from "node:url";

/** Absolute path of the repository, ending in a slash. */
export const repository = fileURLToPath(new URL("../", import.meta.url));

/** Absolute path of a tool among the installed packages. */
export const tool = (name) => `${repository}node_modules/.bin/${name}`;
