// npm run site: install what is missing, build everything, serve the site on this machine.
import { install, tool } from "./steps.mjs";

install();
tool("build packages and site", ["turbo", "run", "build", "--output-logs=errors-only"]);
console.log("\nThe site is at http://localhost:4321/ until you press Ctrl+C.");
tool("serve", ["astro", "preview", "--root", "site", "--port", "4321"], { allowed: [0, 130, null] });
