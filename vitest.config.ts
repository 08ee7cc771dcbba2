import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  resolve: { alias: { "@": here("."), "server-only": here("node_modules/server-only/empty.js") } },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "lib",
          include: ["tests/{lib,reference,content,bin}/**/*.test.ts"],
          maxWorkers: availableParallelism(),
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        test: {
          name: "browser",
          include: ["tests/app/**/*.test.ts"],
          fileParallelism: false,
          sequence: { groupOrder: 1 },
          testTimeout: 60_000,
          hookTimeout: 120_000,
        },
      },
    ],
  },
});
