import type { Plugin } from "vite";

const SCRIPT = /<(script type="module"|link rel="modulepreload")/g;

/**
 * Lets the style and the lettering of the page's first sight go before its script: what stands in `index.html` is
 * painted while the script is on its way.
 */
export const shellFirst: Plugin = {
  name: "shell-first",
  apply: "build",
  transformIndexHtml: {
    order: "post",
    handler(html) {
      if (!html.includes('<script type="module"')) throw new Error("index.html has lost its script");
      return html.replace(SCRIPT, '<$1 fetchpriority="low"');
    },
  },
};
