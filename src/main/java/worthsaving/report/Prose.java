package worthsaving.report;

import java.io.IOException;

/** What a report in words is made of, whatever it is written as. */
interface Prose {

    /** Begins a part. */
    void title(String text) throws IOException;

    void say(String text) throws IOException;

    /** One point of a list. */
    void point(String text) throws IOException;

    void table(TextTable table) throws IOException;

    /** A report but for its heading and the usual warning. */
    @FunctionalInterface
    interface Body {
        void to(Prose out) throws IOException;
    }

    /** A Markdown document under its heading, with the usual warning at the end. */
    static void document(Appendable out, String heading, Body body) throws IOException {
        out.append("# ").append(Markdown.text(heading)).append("\n\n");
        Prose prose = markdown(out);
        body.to(prose);
        prose.title("Note");
        prose.say(Words.ESTIMATES);
    }

    /** For a terminal. */
    static Prose plain(Appendable out) {
        return new Prose() {
            @Override
            public void title(String text) throws IOException {
                out.append('\n');
                say(text);
            }

            @Override
            public void say(String text) throws IOException {
                out.append(TextTable.plain(text)).append('\n');
            }

            @Override
            public void point(String text) throws IOException {
                say("- " + text);
            }

            @Override
            public void table(TextTable table) throws IOException {
                table.write(out);
            }
        };
    }

    /** Markdown with tables (GitHub Flavored Markdown). */
    static Prose markdown(Appendable out) {
        return new Prose() {
            private boolean list;

            @Override
            public void title(String text) throws IOException {
                between();
                out.append("## ").append(Markdown.text(text)).append("\n\n");
            }

            @Override
            public void say(String text) throws IOException {
                between();
                out.append(Markdown.text(text.strip())).append("\n\n");
            }

            @Override
            public void point(String text) throws IOException {
                list = true;
                out.append("- ").append(Markdown.text(text.strip())).append('\n');
            }

            @Override
            public void table(TextTable table) throws IOException {
                between();
                table.markdown(out);
                out.append('\n');
            }

            private void between() throws IOException {
                if (list) {
                    out.append('\n');
                    list = false;
                }
            }
        };
    }
}
