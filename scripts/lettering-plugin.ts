import type { Plugin } from "vite";

/** The weights that the first sight of the page is lettered in, by the names their files keep in the build. */
const WEIGHTS = /^assets\/barlow-semi-condensed-latin-(400|500|600)-normal-[\w-]+\.woff2$/;

/**
 * Sends for the lettering with the page itself, instead of when the style is read: it is there for the first paint, and
 * no line moves because its letters come later.
 */
export const lettering: Plugin = {
  name: "lettering",
  apply: "build",
  transformIndexHtml: {
    order: "post",
    handler(_, { bundle = {} }) {
      const files = Object.keys(bundle).filter((file) => WEIGHTS.test(file));
      if (files.length !== 3)
        throw new Error(`three weights of the lettering are looked for, ${files.length} found`);
      return files.map((file) => ({
        tag: "link",
        attrs: { rel: "preload", as: "font", type: "font/woff2", crossorigin: true, href: `./${file}` },
        injectTo: "head",
      }));
    },
  },
};
