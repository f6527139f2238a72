package garden.plumule.journal

import android.annotation.SuppressLint
import android.app.AlarmManager
import android.app.NotificationChannel
import android.app.NotificationManager
import android.app.PendingIntent
import android.content.BroadcastReceiver
import android.content.Context
import android.content.Intent
import androidx.core.app.NotificationCompat
import androidx.core.app.NotificationManagerCompat
import java.util.Calendar
import org.json.JSONObject

internal const val NOTICE = "garden.plumule.journal.notice"
internal const val ANSWER = "garden.plumule.journal.answer"
internal const val TRAY = "garden.plumule.journal.tray"
internal const val OPENED = "tap"
private const val CHANNEL = "rounds"
private const val DAY_MINUTES = 24 * 60

/**
 * The notices that the phone keeps. Each is written down as it was handed over, with an alarm for its time, and
 * forgotten when it is shown: so they can be set again after a restart, which takes all alarms away.
 */
internal class Notices(private val context: Context) {
  private val kept = context.getSharedPreferences("notices", Context.MODE_PRIVATE)
  private val alarms = context.getSystemService(AlarmManager::class.java)
  private val shown = NotificationManagerCompat.from(context)

  fun set(notice: JSONObject) {
    val id = notice.getInt("id")
    if (notice.getLong("at") <= System.currentTimeMillis()) {
      show(notice)
      return
    }
    kept.edit().putString(id.toString(), notice.toString()).apply()
    arm(id, notice.getLong("at"))
  }

  fun cancel(id: Int) {
    kept.edit().remove(id.toString()).apply()
    alarms.cancel(alarm(id))
    shown.cancel(id)
  }

  /** Its time has come. In quiet hours, of a zone travelled to meanwhile, it waits for their end. */
  fun due(id: Int) {
    val notice = read(id) ?: return
    val until = endOfQuiet(notice)
    if (until != null) {
      arm(id, until)
      return
    }
    kept.edit().remove(id.toString()).apply()
    show(notice)
  }

  /** Sets all alarms again. Of those missed while the phone was off only the last is told. */
  fun restore() {
    val now = System.currentTimeMillis()
    val all = kept.all.keys.mapNotNull { it.toIntOrNull() }.mapNotNull { id -> read(id) }
    val (missed, coming) = all.partition { it.getLong("at") <= now }
    coming.forEach { arm(it.getInt("id"), it.getLong("at")) }
    val last = missed.maxByOrNull { it.getLong("at") }
    missed.filter { it !== last }.forEach { kept.edit().remove(it.getInt("id").toString()).apply() }
    last?.let { due(it.getInt("id")) }
  }

  private fun read(id: Int): JSONObject? = kept.getString(id.toString(), null)?.let { JSONObject(it) }

  /** Inexact, and let through while the phone sleeps: a round needs no second, and so no permission for exact alarms. */
  private fun arm(id: Int, at: Long) {
    alarms.setAndAllowWhileIdle(AlarmManager.RTC_WAKEUP, at, alarm(id))
  }

  private fun alarm(id: Int): PendingIntent {
    val intent = Intent(context, NoticeDue::class.java).putExtra(NOTICE, id)
    return PendingIntent.getBroadcast(context, id, intent, PendingIntent.FLAG_UPDATE_CURRENT or PendingIntent.FLAG_IMMUTABLE)
  }

  /** From inclusive, to exclusive, over midnight where from is later; equal means none. */
  private fun endOfQuiet(notice: JSONObject): Long? {
    val from = notice.getInt("quietFrom")
    val to = notice.getInt("quietTo")
    val wall = Calendar.getInstance()
    val minute = wall.get(Calendar.HOUR_OF_DAY) * 60 + wall.get(Calendar.MINUTE)
    val left = (to - minute + DAY_MINUTES) % DAY_MINUTES
    val length = (to - from + DAY_MINUTES) % DAY_MINUTES
    if (left == 0 || left > length) return null
    wall.add(Calendar.MINUTE, left)
    wall.set(Calendar.SECOND, 0)
    return wall.timeInMillis
  }

  @SuppressLint("MissingPermission") // Without it nothing is shown, and the settings say so.
  private fun show(notice: JSONObject) {
    val channel = NotificationChannel(CHANNEL, context.getString(R.string.notices_channel), NotificationManager.IMPORTANCE_DEFAULT)
    channel.description = context.getString(R.string.notices_channel_what)
    shown.createNotificationChannel(channel)
    val body = notice.getString("body")
    val built = NotificationCompat.Builder(context, CHANNEL)
      .setSmallIcon(R.drawable.notice)
      .setContentTitle(notice.getString("title"))
      .setContentText(body)
      .setStyle(NotificationCompat.BigTextStyle().bigText(body))
      .setCategory(NotificationCompat.CATEGORY_REMINDER)
      .setContentIntent(pressed(notice, OPENED))
      .setAutoCancel(true)
    val answers = notice.getJSONArray("answers")
    for (index in 0 until answers.length()) {
      val answer = answers.getJSONObject(index)
      built.addAction(0, answer.getString("title"), pressed(notice, answer.getString("id")))
    }
    shown.notify(notice.getInt("id"), built.build())
  }

  private fun pressed(notice: JSONObject, answer: String): PendingIntent {
    val id = notice.getInt("id")
    // The action tells the intents of one notice apart, which the extras do not.
    val intent = Intent(context, MainActivity::class.java)
      .setAction("$ANSWER.$answer")
      .setFlags(Intent.FLAG_ACTIVITY_NEW_TASK or Intent.FLAG_ACTIVITY_SINGLE_TOP or Intent.FLAG_ACTIVITY_CLEAR_TOP)
      .putExtra(NOTICE, id)
      .putExtra(ANSWER, answer)
      .putExtra(TRAY, notice.optString("tray"))
    return PendingIntent.getActivity(context, id, intent, PendingIntent.FLAG_UPDATE_CURRENT or PendingIntent.FLAG_IMMUTABLE)
  }
}

/** An alarm rings. */
class NoticeDue : BroadcastReceiver() {
  override fun onReceive(context: Context, intent: Intent) {
    Notices(context).due(intent.getIntExtra(NOTICE, 0))
  }
}

/** The phone was started, or the app replaced by a newer one. */
class NoticesRestored : BroadcastReceiver() {
  override fun onReceive(context: Context, intent: Intent) {
    when (intent.action) {
      Intent.ACTION_BOOT_COMPLETED, Intent.ACTION_MY_PACKAGE_REPLACED -> Notices(context).restore()
    }
  }
}
