import preact from "@preact/preset-vite";
import { defineConfig } from "vitest/config";

export default defineConfig({
  root: "src",
  base: "./",
  publicDir: "../public",
  plugins: [preact()],
  build: { outDir: "../dist", emptyOutDir: true, target: "es2022" },
  test: {
    root: ".",
    include: ["tests/**/*.test.{ts,tsx}"],
    testTimeout: 20_000,
  },
});
