/** The site as it is shipped, in a made-up language: for the test of words, never served to anybody. */
import type { ConfigEnv, PluginOption, UserConfig } from "vite";
import site from "../../vite.config.ts";
import { madeUpWords } from "./made-up-words.ts";

export default function madeUpSite(env: ConfigEnv): UserConfig {
  const config = site(env);
  return {
    ...config,
    // A third longer, it would be over its budget.
    plugins: [madeUpWords(), ...(config.plugins ?? []).filter((plugin) => !isBudget(plugin))],
    worker: {
      ...config.worker,
      plugins: () => [madeUpWords(), ...(config.worker?.plugins?.() ?? [])],
    },
  };
}

function isBudget(plugin: PluginOption): boolean {
  return (
    typeof plugin === "object" &&
    plugin !== null &&
    "name" in plugin &&
    plugin.name === "wideberth-chunk-budget"
  );
}
