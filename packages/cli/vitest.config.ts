export { default } from "../../.config/vitest.ts";
