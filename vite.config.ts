import react from "@vitejs/plugin-react";
import { defineConfig, type Plugin } from "vite";
import { lettering } from "./scripts/lettering-plugin.ts";
import { offline } from "./scripts/offline-plugin.ts";
import { shellFirst } from "./scripts/shell-first-plugin.ts";

/**
 * The built page may ask nothing of any other origin, and says so itself. (The page in development runs scripts in
 * the page and a socket for its hot reload, which this would forbid.)
 */
const CONTENT_POLICY = [
  "default-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self' data:",
  // The printed page's paper size is a rule that the page writes.
  "style-src 'self' 'unsafe-inline'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "object-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
].join("; ");

const contentPolicy: Plugin = {
  name: "content-policy",
  apply: "build",
  transformIndexHtml: () => [
    {
      tag: "meta",
      attrs: { "http-equiv": "Content-Security-Policy", content: CONTENT_POLICY },
      injectTo: "head-prepend",
    },
  ],
};

export default defineConfig({
  base: "./",
  plugins: [react(), contentPolicy, lettering, shellFirst, offline()],
  worker: { format: "es" },
  build: { target: "es2022", chunkSizeWarningLimit: 700 },
});
