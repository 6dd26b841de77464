/** The page of steps that comes first in the kit for closed networks. */

const escaped = (text: string): string =>
  text.replace(/&/g, "&amp;").replace(/</g, "&lt;").replace(/>/g, "&gt;").replace(/"/g, "&quot;");

export const kitSteps = ({ host, share, version }: { host: string; share: string; version: string }): string => {
  const { pathname } = new URL(`${host}/`);
  const address = escaped(host);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Oxygen Supply Functions ${version}: set up in a closed network</title>
<style>
body { max-width: 46rem; margin: 2rem auto; padding: 0 1rem; font: 1rem/1.5 system-ui, sans-serif; color: #20272b; background: #fff; }
code, pre { font-family: Consolas, ui-monospace, monospace; font-size: 0.9em; }
pre { padding: 0.75rem; background: #f3f2ee; overflow-x: auto; }
.caution { padding: 0.5rem 1rem; border-left: 0.25rem solid #8a3b00; background: #fdf1e3; }
td, th { padding: 0.2rem 0.75rem 0.2rem 0; text-align: left; vertical-align: top; }
</style>
</head>
<body>
<h1>Oxygen Supply Functions ${version}</h1>
<p>For <code>${address}/</code>. Nothing here asks for the internet, and nothing of it phones home.</p>
<p class="caution"><b>Caution.</b> A planning aid, not a medical device. Results are estimates: the clinician, the plant's maker, local codes and licensed practice decide. Not tried in Excel itself by its makers: open this-excel.xlsx on the first computer before anybody relies on a figure.</p>
<h2>What is in it</h2>
<table>
<tr><td><code>site/</code></td><td>for any static web server: both builds of the functions, Microsoft's library, the pane, the help page, the local sheet</td></tr>
<tr><td><code>manifests/</code></td><td>manifest.xml for Microsoft 365, manifest-perpetual.xml for Excel 2021 and 2024, manifest.json for Microsoft 365 by an administrator</td></tr>
<tr><td><code>windows/</code>, <code>mac/</code></td><td>what tells Excel where the manifests are</td></tr>
<tr><td><code>samples/</code></td><td>the workbooks, and copies with values only for people without the add-in</td></tr>
<tr><td><code>help/help.html</code></td><td>all functions with units, rules, sources and examples; opens as a file</td></tr>
<tr><td><code>licences/</code>, <code>bill-of-materials.cdx.json</code>, <code>SHA256SUMS</code></td><td>for whoever has to approve it</td></tr>
</table>
<h2>1. Check what came</h2>
<pre>sha256sum -c SHA256SUMS</pre>
<p>On Windows: <code>Get-FileHash -Algorithm SHA256</code> on a file gives the same letters as its line.</p>
<h2>2. Put the site on a web server</h2>
<p>The content of <code>site/</code> at <code>${address}/</code>, over https with a certificate that every PC trusts (an internal authority will do). Files alone are enough; nothing runs on the server. With nginx:</p>
<pre>location ${escaped(pathname)} {
  alias /srv/oxygen/site/;
  types { text/html html; text/css css; text/javascript js; application/json json; text/xml xml;
          image/png png; application/vnd.openxmlformats-officedocument.spreadsheetml.sheet xlsx; }
  add_header Cache-Control "no-cache";
  add_header Access-Control-Allow-Origin "*";
  add_header X-Content-Type-Options "nosniff";
}</pre>
<p>With IIS: a site with a virtual directory, the MIME types above, and the same three headers under HTTP Response Headers.</p>
<p>Then open <code>${address}/about.html</code> on a PC: it must show without a warning of the certificate.</p>
<h2>3. Tell Excel of it</h2>
<p>Install one of the two builds only; both use the name OXYGEN.</p>
<table>
<tr><th>Microsoft 365</th><td>manifest.xml</td></tr>
<tr><th>Excel 2021, 2024</th><td>manifest-perpetual.xml</td></tr>
</table>
<p><b>Windows.</b> Put the manifest on the share <code>${escaped(share)}</code>, readable by all. ${share.includes("SERVER") ? "Write your share's name into <code>windows/trusted-catalogue.reg</code> first (each \\ doubled). " : ""}Merge <code>windows/trusted-catalogue.reg</code> for each user (by group policy for many), restart Excel, then Home › Add-ins › Advanced › Shared Folder › Oxygen Supply Functions › Add. Microsoft means this way for trials; where an administrator can deploy centrally, that is the better one.</p>
<p><b>Mac.</b> <code>mac/READ-ME.txt</code>.</p>
<p>Excel may still look for Microsoft's own addresses when it starts an add-in. Without internet that costs time; it was not tried on a PC without any.</p>
<h2>4. Ask the first PC</h2>
<p>Open <code>samples/this-excel.xlsx</code>, press Ctrl+Alt+F9, read its box, and keep its last line. Then <code>samples/function-checks.xlsx</code>: it must say All ok.</p>
<h2>5. Without Excel</h2>
<p>A clerk needs neither Excel nor Node: the local sheet at <code>${address}/sheet.html</code> calculates the samples and the clerk's own workbooks in the browser. What is typed there stays on that computer.</p>
<h2>Updates</h2>
<p>Replace the content of <code>site/</code> and the manifest. Excel asks for the functions anew because the manifest's version has risen. Cells keep their saved values until Ctrl+Alt+F9.</p>
</body>
</html>
`;
};
