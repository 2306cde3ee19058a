// After the tests of a file that has a page: Preact runs effects up to 35 ms after a paint, and the
// page must still be there when it does.
import { afterAll } from "vitest";

afterAll(async () => {
  if (typeof document !== "undefined") await new Promise((resolve) => setTimeout(resolve, 120));
});
