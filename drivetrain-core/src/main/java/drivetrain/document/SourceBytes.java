package drivetrain.document;

import drivetrain.refusal.Place;
import drivetrain.refusal.Refusal;
import drivetrain.refusal.RefusedException;
import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** Bytes from outside, turned into text: UTF-8 without a byte order mark, never more than a document may hold. */
final class SourceBytes {

    private static final int LEAST_BYTES_TO_TELL = 2;

    private SourceBytes() {}

    static SourceText read(Path file) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            return read(file.toString(), in);
        }
    }

    static SourceText readResource(String path) throws IOException {
        try (InputStream in = SourceBytes.class.getResourceAsStream("/" + path)) {
            if (in == null) {
                throw new FileNotFoundException(path);
            }
            return read(path, in);
        }
    }

    private static SourceText read(String name, InputStream in) throws IOException {
        byte[] bytes = in.readNBytes(Limits.DOCUMENT_BYTES + 1);
        if (bytes.length > Limits.DOCUMENT_BYTES) {
            throw SourceText.tooLong(name);
        }
        return decode(name, bytes);
    }

    static SourceText decode(String name, byte[] bytes) {
        refuseOtherEncodings(name, bytes);
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer text = CharBuffer.allocate(bytes.length);
        CoderResult result = decoder.decode(ByteBuffer.wrap(bytes), text, true);
        text.flip();
        if (result.isError()) {
            SourceText before = SourceText.of(name, text.toString());
            throw before.refusal(text.length(), "has a byte that is not UTF-8", "text saved as UTF-8");
        }
        return SourceText.of(name, text.toString());
    }

    private static void refuseOtherEncodings(String name, byte[] bytes) {
        if (bytes.length < LEAST_BYTES_TO_TELL) {
            return;
        }
        int first = bytes[0] & 0xFF;
        int second = bytes[1] & 0xFF;
        boolean marked = (first == 0xFE && second == 0xFF) || (first == 0xFF && second == 0xFE);
        if (marked || first == 0 || second == 0) {
            throw refused(name, "is saved as UTF-16 or UTF-32");
        }
        if (first == 0xEF && second == 0xBB && bytes.length > 2 && (bytes[2] & 0xFF) == 0xBF) {
            throw refused(name, "starts with a byte order mark");
        }
    }

    private static RefusedException refused(String name, String problem) {
        return Refusal.of("document", "", problem)
                .allowing("text saved as UTF-8 without a byte order mark")
                .in(new Place(name, 1, 1))
                .asException();
    }
}
