import { addCase } from "./case/addCase";
import { importFile } from "./case/importFile";
import { newCase } from "./case/newCase";
import { newCasebook } from "./case/newCasebook";
import { fail } from "./fail";

const usage =
  "usage: npm run -s case -- new [FILE.md] [--instrument WORDS] [--says WORDS] | add FILE.md | " +
  "import FILE [--columns HEADING=FIELD ...] [--dates dmy|mdy|ymd] [--decimal point|comma] [--incomplete open|refuse] [--write] | " +
  "casebook FOLDER";
const [name, ...args] = process.argv.slice(2);

switch (name) {
  case "new":
    newCase(args, usage);
    break;
  case "add":
    addCase(args, usage);
    break;
  case "import":
    await importFile(args, usage);
    break;
  case "casebook":
    newCasebook(args, usage);
    break;
  default:
    fail(2, usage);
}
