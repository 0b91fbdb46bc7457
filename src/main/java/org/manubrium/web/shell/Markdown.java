package org.manubrium.web.shell;

import org.commonmark.parser.Parser;
import org.commonmark.renderer.html.HtmlRenderer;
import org.owasp.html.HtmlPolicyBuilder;
import org.owasp.html.PolicyFactory;

/** Markdown written by an educator, as HTML that can do nothing: text, lists and emphasis only. */
public final class Markdown {
    private static final Parser PARSER = Parser.builder().build();
    private static final HtmlRenderer RENDERER =
            HtmlRenderer.builder().escapeHtml(true).build();
    private static final PolicyFactory POLICY = new HtmlPolicyBuilder()
            .allowElements("p", "br", "em", "strong", "ul", "ol", "li", "blockquote", "h3", "h4", "code")
            .toFactory();

    private Markdown() {}

    public static String toHtml(String markdown) {
        return POLICY.sanitize(RENDERER.render(PARSER.parse(markdown)));
    }
}
