import java.io.File;
import net.sf.okapi.lib.xliff2.core.Segment;
import net.sf.okapi.lib.xliff2.reader.Event;
import net.sf.okapi.lib.xliff2.reader.XLIFFReader;
import net.sf.okapi.lib.xliff2.writer.XLIFFWriter;

/**
 * Reads an XLIFF 2 file with every check of the toolkit (schemas, ids, codes, modules), and writes what it understood as
 * another. Prints how many units and targets there were; ends with an exception where the file breaks a rule.
 */
class RoundTrip {
  public static void main(String[] arguments) throws Exception {
    int units = 0;
    int targets = 0;
    try (XLIFFReader reader = new XLIFFReader(XLIFFReader.VALIDATION_MAXIMAL);
        XLIFFWriter writer = new XLIFFWriter()) {
      reader.open(new File(arguments[0]));
      writer.create(new File(arguments[1]), "en");
      while (reader.hasNext()) {
        Event event = reader.next();
        if (event.isUnit()) {
          units++;
          for (Segment segment : event.getUnit().getSegments()) if (segment.hasTarget()) targets++;
        }
        writer.writeEvent(event);
      }
    }
    System.out.println(units + " units, " + targets + " targets");
  }
}
