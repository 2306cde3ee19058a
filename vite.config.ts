import { fileURLToPath } from "node:url";
import preact from "@preact/preset-vite";
import type { Plugin } from "vite";
import { VitePWA } from "vite-plugin-pwa";
import { defineConfig } from "vitest/config";
import { notKeptOffline } from "./src/kept-offline.ts";
import LongestFirst from "./tests/longest-first.ts";

/** Fails the build of a page that would lack something without a network. */
const wholeOffline: Plugin = {
  name: "whole-offline",
  apply: "build",
  closeBundle: {
    // After the service worker has been written.
    order: "post",
    sequential: true,
    handler(error) {
      if (error) return;
      const lacking = notKeptOffline(fileURLToPath(new URL("dist", import.meta.url)));
      if (lacking.length > 0)
        throw new Error(`The service worker does not keep:\n${lacking.join("\n")}`);
    },
  },
};

export default defineConfig({
  root: "src",
  base: "./",
  publicDir: "../public",
  plugins: [
    preact(),
    VitePWA({
      // The page registers the worker itself, and nothing reloads by itself: a run may be on.
      injectRegister: null,
      registerType: "prompt",
      workbox: {
        globPatterns: ["**/*.{html,js,css,svg,png,woff2,json,pack,pcm,wasm}"],
        // Another language's voice is fetched and kept when it is first wanted.
        globIgnores: ["schema/**", "pictures/**", "sound/!(en|en-ear).pack"],
        maximumFileSizeToCacheInBytes: 8 * 2 ** 20,
        clientsClaim: true,
        cleanupOutdatedCaches: true,
      },
      manifest: {
        name: "Tankside",
        short_name: "Tankside",
        description: "A voice- and audio-guided timer for developing film by hand, in the dark.",
        lang: "en",
        dir: "ltr",
        categories: ["photo", "utilities"],
        // No `id`: it would be read from the host's root, and two copies on one host would be one program.
        start_url: "./",
        scope: "./",
        display: "standalone",
        background_color: "#000000",
        theme_color: "#000000",
        icons: [
          { src: "icon-192.png", sizes: "192x192", type: "image/png" },
          { src: "icon-512.png", sizes: "512x512", type: "image/png" },
          // Smaller in its ground: a device may cut all but the inner circle away, four fifths across.
          {
            src: "icon-maskable-512.png",
            sizes: "512x512",
            type: "image/png",
            purpose: "maskable",
          },
        ],
      },
    }),
    wholeOffline,
  ],
  // What a worker fetches, it fetches as the page does: a language's words only when they are wanted.
  worker: { format: "es" },
  build: {
    outDir: "../dist",
    emptyOutDir: true,
    target: "es2022",
    // What the first screen needs is one file: it compresses better than in parts, and is asked for once.
    rolldownOptions: {
      output: {
        codeSplitting: {
          groups: [
            { name: "first", tags: ["$initial"], priority: 2 },
            // What is fetched together as soon as the first screen stands: each request has its price.
            {
              name: "run",
              test: /src\/(live|process|script|timeline|tones|voice|logbook)\//,
              priority: 1,
            },
          ],
        },
      },
    },
  },
  test: {
    root: ".",
    include: ["tests/**/*.test.{ts,tsx}"],
    setupFiles: ["tests/settled.ts"],
    sequence: { sequencer: LongestFirst },
    testTimeout: 20_000,
  },
});
