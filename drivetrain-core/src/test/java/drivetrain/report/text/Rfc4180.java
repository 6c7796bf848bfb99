package drivetrain.report.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Reads CSV by the grammar of RFC 4180 (October 2005), section 2, and refuses all else: lines end with CR LF, a quote stands only around
 * a field or doubled within one, every record has the fields of the header. Beyond the grammar, TEXTDATA may be any sign outside ASCII.
 */
final class Rfc4180 {

    private final String text;
    private int index;

    private Rfc4180(String text) {
        this.text = text;
    }

    /** Reads a file with a header into one map a record. */
    static List<Map<String, String>> records(String text) {
        Rfc4180 reader = new Rfc4180(text);
        List<String> header = reader.record();
        if (Set.copyOf(header).size() != header.size()) {
            throw new IllegalArgumentException("two columns have one name: " + header);
        }
        List<Map<String, String>> records = new ArrayList<>();
        while (reader.index < text.length()) {
            List<String> fields = reader.record();
            if (fields.size() != header.size()) {
                throw new IllegalArgumentException(fields.size() + " fields, header has " + header.size());
            }
            Map<String, String> record = new LinkedHashMap<>();
            for (int column = 0; column < header.size(); column++) {
                record.put(header.get(column), fields.get(column));
            }
            records.add(record);
        }
        return records;
    }

    /** record = field *(COMMA field) CRLF. */
    private List<String> record() {
        List<String> fields = new ArrayList<>();
        do {
            fields.add(text.startsWith("\"", index) ? escaped() : nonEscaped());
        } while (accept(","));
        if (!accept("\r\n")) {
            throw new IllegalArgumentException("no CR LF at index " + index + " behind " + fields);
        }
        return fields;
    }

    /** escaped = DQUOTE *(TEXTDATA / COMMA / CR / LF / 2DQUOTE) DQUOTE. */
    private String escaped() {
        StringBuilder field = new StringBuilder();
        index++;
        while (true) {
            int quote = text.indexOf('"', index);
            if (quote < 0) {
                throw new IllegalArgumentException("a quote is not closed: " + field);
            }
            field.append(text, index, quote);
            index = quote + 1;
            if (!accept("\"")) {
                return field.toString();
            }
            field.append('"');
        }
    }

    /** non-escaped = *TEXTDATA, where TEXTDATA has no comma, no quote and no control character. */
    private String nonEscaped() {
        int start = index;
        while (index < text.length() && isTextData(text.charAt(index))) {
            index++;
        }
        return text.substring(start, index);
    }

    private static boolean isTextData(char sign) {
        return sign >= ' ' && sign != ',' && sign != '"' && sign != 0x7F;
    }

    private boolean accept(String expected) {
        boolean found = text.startsWith(expected, index);
        index += found ? expected.length() : 0;
        return found;
    }
}
