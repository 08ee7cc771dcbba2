// @ts-check
import { build } from "./setup/build.mjs";
import { findFreePort } from "./setup/findFreePort.mjs";
import { install } from "./setup/install.mjs";
import { projectRoot } from "./setup/projectRoot.mjs";
import { readPort } from "./setup/readPort.mjs";
import { say } from "./setup/say.mjs";
import { serve } from "./setup/serve.mjs";
import { stopWithParent } from "./setup/stopWithParent.mjs";

stopWithParent();

/** @param {string} address */
const sayAddress = (address) => process.stdout.write(`Benchlore is ready at ${address}\n`);

try {
  const wanted = readPort(process.env.PORT);
  await install();
  await build();
  let outcome;
  let port = wanted;
  do {
    port = await findFreePort(port);
    if (port !== wanted) say(`Port ${wanted} is taken by another program; using ${port}.`);
    outcome = await serve({ root: projectRoot, port, onAnswer: sayAddress });
    // A server that never answered, on a port that is no longer free, was beaten to it: go on to the next.
  } while (!outcome.answered && (await findFreePort(port)) !== port);
  process.exitCode = outcome.code;
} catch (error) {
  say(error instanceof Error ? error.message : String(error));
  process.exitCode = error instanceof RangeError ? 2 : 1;
}
