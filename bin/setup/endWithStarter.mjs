// @ts-check
// Loaded into the server's process ahead of the server. The channel to the process that started it closes however
// that process ends, even when it is killed outright.

const graceMs = 3000;

process.on("disconnect", () => {
  setTimeout(() => process.exit(1), graceMs).unref();
  process.kill(process.pid, "SIGTERM");
});
