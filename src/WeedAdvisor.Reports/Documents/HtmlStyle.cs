namespace WeedAdvisor.Reports.Documents;

/// <summary>How a document looks in a browser and on paper. No scripts, nothing from elsewhere.</summary>
internal static class HtmlStyle
{
    public const string Sheet =
        "body{font:16px/1.45 system-ui,sans-serif;max-width:64rem;margin:1.5rem auto;padding:0 "
        + "1rem;color:#111;background:#fff}"
        + "h2{border-top:2px solid #111;padding-top:.6rem}p{margin:.35rem 0}ul{margin:.35rem "
        + "0}ul.marks{list-style:none;padding-left:1rem}"
        + ".mark{font-weight:bold}.warning{color:#8a1c1c;font-weight:bold}.muted{color:#555}.strong{font-weight:bold}"
        + ".amount{white-space:nowrap}.source{padding-left:1rem}"
        + "table{border-collapse:collapse;margin:.5rem "
        + "0}caption{text-align:left;font-weight:bold}th,td{border-bottom:1px solid #999;padding:.2rem "
        + ".6rem;text-align:right;vertical-align:top}"
        + "th:first-child,td:first-child,th.text,td.text{text-align:left}tr.strong{background:#eee}"
        + "figure{margin:.5rem 0}svg{max-width:100%;height:auto;font:12px "
        + "system-ui,sans-serif}.small{font-size:10px;fill:#555}"
        + "@media print{body{max-width:none;margin:0;font-size:9pt}tr,svg{break-inside:avoid}"
        + "thead{display:table-header-group}}";
}
