/**
 * The manifest for perpetual Excel (2021, 2024) is the one for Microsoft 365 but for what is listed here, so it is made
 * from that and stands nowhere else.
 */
const changes: readonly (readonly [from: RegExp, to: string])[] = [
  [/<Id>[^<]+<\/Id>/, "<Id>87d3a2a4-5d0d-4f5e-9a3c-0c5b8e7f1d26</Id>"],
  [/(<DisplayName DefaultValue=")[^"]+"/, '$1Oxygen Supply Functions (Excel 2021, 2024)"'],
  // Errors with words (CustomFunctions.Error) need 1.2; Office 2021 and 2024 have it and lack 1.4.
  [/(<Set Name="CustomFunctionsRuntime" MinVersion=")[^"]+"/, '$11.2"'],
  [/\/functions\.js"/, '/functions-perpetual.js"'],
  [/\/functions\.html"/, '/functions-perpetual.html"'],
  [/\/functions\.json"/, '/functions-perpetual.json"'],
];

export const perpetualManifest = (manifest: string): string =>
  changes.reduce((text, [from, to]) => {
    if (!from.test(text)) throw new Error(`manifest.xml has nothing that matches ${from.source}`);
    return text.replace(from, to);
  }, manifest);
