// Serves dist/ on this machine only, until stopped.
import { siteServer } from "./site.mjs";

const port = Number(process.env.PORT || 8080);
if (!Number.isInteger(port) || port < 1 || port > 65535) {
  console.error(`PORT is ${process.env.PORT}: give it a whole number from 1 to 65535.`);
  process.exit(1);
}
const server = await siteServer();
server.on("error", (error) => {
  const why = error.code === "EADDRINUSE" ? `Port ${port} is taken: stop what uses it, or choose another with PORT=8081.` : error.message;
  console.error(why);
  process.exit(1);
});
server.listen(port, "127.0.0.1", () => console.log(`The site is on http://127.0.0.1:${port}/ (stop it with Ctrl+C).`));
