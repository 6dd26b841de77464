/**
 * Properties draw the same numbers in every run, so that one that fails does so again. Set here for every test file, when
 * it first asks for fast-check, so that none can forget it.
 */
const seed = 20261125;

if (typeof jest !== "undefined")
  jest.mock("fast-check", () => {
    const library = jest.requireActual("fast-check");
    library.configureGlobal({ seed });
    return library;
  });

module.exports = { seed };
