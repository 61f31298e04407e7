// SPDX-License-Identifier: Apache-2.0
#include "checklist/report/page.h"

namespace walkdown::report {

// Black on white; what colour would say is said by words, signs, weight and hatching.
//
// The window's PDF is made from the same sheet by a reader of HTML that knows less of it: what is
// set apart is so in px, the one unit that it knows there, and what it cannot parse or would take
// wrong stands at the end, as it takes nothing from there on.
const char* const kStyle = R"(
html{font:10.5pt/1.42 "Liberation Serif","Noto Serif",Cambria,Georgia,serif;color:#111;background:#fff}
h1{font-size:21pt;line-height:1.1;margin:0 0 4px;letter-spacing:-.01em}
h2{font-size:13pt;margin:34px 0 9px;padding-top:6px;border-top:2.2pt solid #111;break-after:avoid}
h3{font-size:10.5pt;margin:17px 0 5px;break-after:avoid}
p{margin:0 0 8px;max-width:150mm}
.mark{font:700 14pt/1.2 "Liberation Mono","DejaVu Sans Mono",monospace;white-space:nowrap}
.says{margin:15px 0;padding:3mm 4mm;border:1pt solid #111;border-left-width:7pt}
.bad{border:3.4pt double #111;border-left-width:12pt}
.strong{font-weight:700}
table{border-collapse:collapse;width:100%;margin:6px 0 11px;font-size:9pt;line-height:1.3}
th{text-align:left;font-weight:700;border-bottom:1pt solid #111;padding:2px 9px 2px 0;vertical-align:bottom}
td{padding:3px 9px 2px 0;border-bottom:.4pt solid #999;vertical-align:top;overflow-wrap:break-word}
.tight{font-size:8.5pt}
.n{font:8pt "Liberation Mono","DejaVu Sans Mono",monospace;color:#333;white-space:nowrap}
.stands{white-space:nowrap}
.sign{display:inline-block;min-width:4mm}
.fault{border:.6pt solid #111;padding:2mm 3mm;margin:9px 0;break-inside:avoid}
code{font:8.6pt "Liberation Mono","DejaVu Sans Mono",monospace;overflow-wrap:anywhere}
.caution{border:1pt solid #111;padding:2.5mm 4mm;margin:11px 0;break-inside:avoid}
footer{margin-top:30px;padding-top:1.5mm;border-top:.6pt solid #111;font-size:8pt}
.head{display:grid;grid-template-columns:1fr 36mm;gap:6mm;align-items:start}
.qr{text-align:center;font-size:8pt}
thead{display:table-header-group}
tr{break-inside:avoid}
.qr svg{width:32mm;height:32mm;display:block;margin:0 auto 4px}
.says b{font-size:12.5pt}
.tight td{padding-top:1px;padding-bottom:1px}
.facts{font-size:10.5pt;line-height:1.42}
.facts td{border:0;padding:0 9px 2px 0}
.fault table{margin:1mm 0}
h2 .no{display:inline-block;min-width:9mm;font-weight:400}
*{box-sizing:border-box}
.facts td:first-child{width:34mm;color:#333;font-style:italic}
.num td:nth-child(n+2):not(:last-child),.num th:nth-child(n+2):not(:last-child){text-align:right}
.signs td:nth-child(-n+4){white-space:nowrap}
.log td:first-child,.log th:first-child{width:15mm}
.log td:nth-child(2){width:18mm;white-space:nowrap}
svg.chart{width:100%;height:auto;display:block;margin:1mm 0 2mm;break-inside:avoid}
svg text{font:9.5px "Liberation Sans","DejaVu Sans",Arial,sans-serif;fill:#111}
ol li,ul li{margin-bottom:1mm;max-width:150mm}
body{max-width:186mm;margin:0 auto;padding:6mm 4mm}
@page{size:auto;margin:16mm 15mm 18mm}
@media print{body{max-width:none;padding:0}a{color:inherit;text-decoration:none}}
)";

}  // namespace walkdown::report
